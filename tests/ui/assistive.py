#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What assistive technology is told of a running program, through AT-SPI.

usage: assistive.py PID [--all | --but FRAME]
Prints a line for each control that has no name of its own: its role and where it is. GTK gives a widget without a name
that of its class, which helps nobody. With --all prints the whole tree, with --but leaves out the
frame of that name. Ends with 3 when the program isn't found.
"""
import re
import sys

import gi
gi.require_version('Atspi', '2.0')
from gi.repository import Atspi, GLib  # noqa: E402

# Roles that people act on or read a value from, so that they are nothing without a name.
CONTROLS = {'push button', 'toggle button', 'check box', 'radio button', 'combo box', 'entry', 'text', 'password text',
            'spin button', 'slider', 'switch', 'page tab', 'menu item', 'check menu item', 'radio menu item', 'link',
            'table cell', 'tree item', 'progress bar', 'level bar', 'table', 'alert', 'dialog',
            'frame', 'list item'}
CLASS = re.compile(r'(Gtk|Adw|Lap)[A-Z]\w*')
# The search of libadwaita's window of properties: told of even where it is switched off, and not ours to name.
FOREIGN = {('entry', 'GtkSearchEntry')}
# The button by which a toast of libadwaita goes.
FOREIGN_WITHIN = 'filler “AdwToastWidget”'
PATIENCE = 100  # tries, a tenth of a second each


def application(pid):
    for _ in range(PATIENCE):
        desktop = Atspi.get_desktop(0)
        for index in range(desktop.get_child_count()):
            child = desktop.get_child_at_index(index)
            if child and child.get_process_id() == pid and child.get_child_count():
                return child
        loop = GLib.MainLoop()
        GLib.timeout_add(100, loop.quit)
        loop.run()
    sys.exit(3)


def children(node):
    for index in range(node.get_child_count()):
        child = node.get_child_at_index(index)
        if child:
            yield child


def named(node):
    """It, or a label inside it that a reader falls back to, has words."""
    name = node.get_name() or ''
    if name and not CLASS.fullmatch(name):
        return True
    if node.get_role_name() in ('list item', 'table cell', 'page tab', 'push button', 'toggle button'):
        return any(named(child) for child in children(node))
    return node.get_role_name() not in CONTROLS | {'label'} and any(named(child) for child in children(node))


def walk(node, path, everything):
    name, role = node.get_name() or '', node.get_role_name()
    here = path + [f'{role} “{name}”']
    states = node.get_state_set()
    if everything:
        print('  ' * len(path) + here[-1])
    elif role in CONTROLS and (role, name) not in FOREIGN and path[-1:] != [FOREIGN_WITHIN] and states.contains(Atspi.StateType.VISIBLE) and not named(node):
        print(' / '.join(here[-9:]))
    for child in children(node):
        walk(child, here, everything)


if __name__ == '__main__':
    but = sys.argv[3] if sys.argv[2:3] == ['--but'] else None
    for frame in children(application(int(sys.argv[1]))):
        if frame.get_name() != but:
            walk(frame, [], '--all' in sys.argv[2:])
