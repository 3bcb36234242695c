# SPDX-License-Identifier: GPL-3.0-or-later
"""What the desktop is told, judged by the desktop's own tools."""
import os
import pathlib
import re
import subprocess
import tempfile
import xml.etree.ElementTree as ET

from tap import Tap

SOURCE, BUILD = pathlib.Path(os.environ['LAP_SOURCE']), pathlib.Path(os.environ['LAP_BUILD'])
APP = 'org.lapwing.Lapwing'
ICONS = SOURCE / 'data' / 'icons' / 'hicolor'
TYPES = {'lapwing': ('application/vnd.lapwing.session+json', 'lapwing-session'),
         'lapweek': ('application/vnd.lapwing.week+json', 'lapwing-week')}


def complaints(*command, **more):
    """The output of @command where it fails, else nothing."""
    done = subprocess.run([str(c) for c in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
                          **more)
    return [] if done.returncode == 0 else [f'{command[0]} ended with {done.returncode}: {done.stdout.strip()}']


def content_type(path, home):
    environment = dict(os.environ, XDG_DATA_HOME=str(home), XDG_DATA_DIRS='/usr/share')
    out = subprocess.run(['gio', 'info', '-a', 'standard::content-type', str(path)], env=environment,
                         stdout=subprocess.PIPE, text=True, check=True).stdout
    return re.search(r'content-type: (\S+)', out).group(1)


def types_are_known(tap):
    """shared-mime-info reads the package; GIO then tells the files by name, and by content under another name."""
    with tempfile.TemporaryDirectory() as folder:
        home = pathlib.Path(folder)
        packages = home / 'mime' / 'packages'
        packages.mkdir(parents=True)
        package = BUILD / 'data' / f'{APP}.xml'
        (packages / package.name).write_bytes(package.read_bytes())
        tap.check('MIME package is read', complaints('update-mime-database', home / 'mime'))
        for suffix, (kind, word) in TYPES.items():
            text = f'{{\n  "format": "{word}",\n  "version": 1\n}}\n'
            for name in (f'named.{suffix}', f'unnamed-{suffix}'):
                path = home / name
                path.write_text(text)
                tap.equal(f'{name} is {kind}', content_type(path, home), kind)


def icons_are_drawn(tap):
    kinds = [kind.replace('/', '-') for kind, _ in TYPES.values()]
    expected = {f'scalable/apps/{APP}.svg': 128, f'symbolic/apps/{APP}-symbolic.svg': 16}
    expected.update({f'scalable/mimetypes/{kind}.svg': 128 for kind in kinds})
    found = {str(path.relative_to(ICONS)) for path in ICONS.rglob('*') if path.is_file()}
    tap.equal('the icons are those that are asked for', found, set(expected))
    for name, size in expected.items():
        path = ICONS / name
        root = ET.parse(path).getroot()
        tap.equal(f'{path.name} is {size} by {size}', root.get('viewBox'), f'0 0 {size} {size}')
        with tempfile.NamedTemporaryFile(suffix='.png') as picture:
            tap.check(f'{path.name} is drawn', complaints('rsvg-convert', '-o', picture.name, path))
    symbolic = (ICONS / f'symbolic/apps/{APP}-symbolic.svg').read_text()
    tap.equal('the symbolic icon has one colour, for the theme to replace',
              set(re.findall(r'#[0-9a-fA-F]{3,6}', symbolic)), {'#2e3436'})


def names_agree(tap):
    desktop = (BUILD / 'data' / f'{APP}.desktop').read_text()
    metainfo = ET.parse(BUILD / 'data' / f'{APP}.metainfo.xml').getroot()
    kinds = {kind for kind, _ in TYPES.values()}
    tap.equal('the desktop file opens both kinds of file',
              set(filter(None, re.search(r'^MimeType=(.*)$', desktop, re.M).group(1).split(';'))), kinds)
    tap.equal('the metainfo names both kinds of file', {e.text for e in metainfo.iter('mediatype')}, kinds)
    version = re.search(r"version: '([^']+)'", (SOURCE / 'meson.build').read_text()).group(1)
    tap.equal('the metainfo has this version first', next(metainfo.iter('release')).get('version'), version)


def main():
    tap = Tap()
    tap.check('desktop file', complaints('desktop-file-validate', BUILD / 'data' / f'{APP}.desktop'))
    tap.check('metainfo', complaints('appstreamcli', 'validate', '--no-net', BUILD / 'data' / f'{APP}.metainfo.xml'))
    tap.check('settings', complaints('glib-compile-schemas', '--strict', '--dry-run', SOURCE / 'data'))
    names_agree(tap)
    types_are_known(tap)
    icons_are_drawn(tap)
    tap.done()


main()
