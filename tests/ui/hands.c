/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/hands.h"

#include <X11/XKBlib.h>
#include <gdk/x11/gdkx.h>
#include <gmodule.h>
#include <math.h>

/* Points between the ends of a drag: GTK asks for some way before it believes in one. */
#define DRAG_STEPS 12
#define WHEEL_UP   4
#define WHEEL_DOWN 5
/* More than Tab needs to go through all of a window. */
#define MOST_PRESSES 400
/* s: more than anything takes that ends, on any machine. */
#define PATIENCE     120

/* X11/extensions/XTest.h */
static int (*fake_key)    (Display *display, unsigned int code, Bool down, unsigned long delay);
static int (*fake_button) (Display *display, unsigned int button, Bool down, unsigned long delay);
static int (*fake_motion) (Display *display, int screen, int x, int y, unsigned long delay);

static Display *display;
static GtkWindow *window; /* the hands are on it; NULL once it has gone */

static void
load_once (void)
{
  static const struct { const char *name; gpointer *function; } functions[] = {
    { "XTestFakeKeyEvent", (gpointer *) &fake_key }, { "XTestFakeButtonEvent", (gpointer *) &fake_button },
    { "XTestFakeMotionEvent", (gpointer *) &fake_motion },
  };
  GModule *module;

  if (display != NULL)
    return;
  module = g_module_open ("libXtst.so.6", G_MODULE_BIND_LAZY);
  g_assert_nonnull (module);
  for (guint i = 0; i < G_N_ELEMENTS (functions); i++)
    g_assert_true (g_module_symbol (module, functions[i].name, functions[i].function));
  display = XOpenDisplay (NULL);
  g_assert_nonnull (display);
}

/* The server has sent what it makes of the events when it answers; GDK has taken that in when it is answered, too. */
static void
take_in (void)
{
  XSync (display, False);
  gdk_display_sync (gdk_display_get_default ());
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static void
settle (void)
{
  take_in ();
  if (window != NULL && gtk_widget_get_mapped (GTK_WIDGET (window)))
    gtk_test_widget_wait_for_draw (GTK_WIDGET (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static Window
xid_of (GtkWidget *widget)
{
  return gdk_x11_surface_get_xid (gtk_native_get_surface (gtk_widget_get_native (widget)));
}

static gboolean
has_keyboard (gpointer data)
{
  return gtk_window_is_active (data);
}

static void
give_up (gpointer waiting)
{
  g_error ("%s: waited for %d s in vain", (const char *) waiting, PATIENCE);
}

void
hands_wait (gboolean (*is_so) (gpointer data), gpointer data, const char *what)
{
  guint limit = g_timeout_add_once (PATIENCE * 1000, give_up, (gpointer) what);

  load_once ();
  while (!is_so (data))
    g_main_context_iteration (NULL, TRUE);
  g_source_remove (limit);
  settle ();
}

void
hands_on (GtkWindow *to)
{
  load_once ();
  g_set_weak_pointer (&window, to);
  XSetInputFocus (display, xid_of (GTK_WIDGET (to)), RevertToParent, CurrentTime);
  settle ();
  hands_until (has_keyboard, to);
}

static void
on_screen (GtkWidget *widget, double x, double y, int *sx, int *sy)
{
  GtkNative *native = gtk_widget_get_native (widget);
  graphene_point_t point;
  double dx, dy;
  Window child;

  g_assert_true (gtk_widget_get_mapped (widget));
  g_assert_true (gtk_widget_compute_point (widget, GTK_WIDGET (native), &GRAPHENE_POINT_INIT (x, y), &point));
  gtk_native_get_surface_transform (native, &dx, &dy);
  XTranslateCoordinates (display, xid_of (widget), DefaultRootWindow (display), floor (point.x + dx),
                         floor (point.y + dy), sx, sy, &child);
}

void
hands_move (GtkWidget *widget, double x, double y)
{
  int sx, sy;

  on_screen (widget, x, y, &sx, &sy);
  fake_motion (display, -1, sx, sy, 0);
  settle ();
}

void
hands_point (GtkWidget *widget)
{
  hands_move (widget, gtk_widget_get_width (widget) / 2.0, gtk_widget_get_height (widget) / 2.0);
}

/* Whether the next press has to do with this one is said here: how fast a test runs says nothing. When its time is over
 * a list forgets the row on which a button is held, and the press after next is taken for another first one where the
 * next is elsewhere (GTK 4.8.3). So it is over when the button has been let go, or only when the next press has come. */
static void
press (guint button, gboolean another)
{
  g_object_set (gtk_settings_get_default (), "gtk-double-click-time", another ? G_MAXINT : 0, NULL);
  fake_button (display, button, True, 0);
}

void
hands_button (guint button, gboolean down)
{
  if (down)
    press (button, FALSE);
  else
    fake_button (display, button, False, 0);
  settle ();
}

/* A press and what lets it go are there together: GTK takes in all that is there before it looks at the time. Between
 * two clicks there is a frame, as between those of a hand. */
void
hands_click (guint button, guint times)
{
  for (guint i = 0; i < times; i++) {
    press (button, i + 1 < times);
    fake_button (display, button, False, 0);
    settle ();
  }
}

void
hands_click_at (GtkWidget *widget, double x, double y, guint button, guint times)
{
  int sx, sy;

  on_screen (widget, x, y, &sx, &sy);
  fake_motion (display, -1, sx, sy, 0);
  hands_click (button, times);
}

void
hands_click_on (GtkWidget *widget)
{
  hands_click_at (widget, gtk_widget_get_width (widget) / 2.0, gtk_widget_get_height (widget) / 2.0,
                  GDK_BUTTON_PRIMARY, 1);
}

void
hands_drag (GtkWidget *from, double x, double y, GtkWidget *to, double to_x, double to_y)
{
  int ax, ay, bx, by;

  on_screen (from, x, y, &ax, &ay);
  hands_move (from, x, y);
  hands_button (1, TRUE);
  for (int i = 1; i <= DRAG_STEPS; i++) {
    on_screen (to, to_x, to_y, &bx, &by);
    fake_motion (display, -1, ax + (bx - ax) * i / DRAG_STEPS, ay + (by - ay) * i / DRAG_STEPS, 0);
    settle ();
  }
  hands_button (1, FALSE);
}

void
hands_wheel (int notches)
{
  for (int i = 0; i < ABS (notches); i++) {
    fake_button (display, notches > 0 ? WHEEL_DOWN : WHEEL_UP, True, 0);
    fake_button (display, notches > 0 ? WHEEL_DOWN : WHEEL_UP, False, 0);
  }
  settle ();
}

static void
hold (GdkModifierType modifiers, gboolean down)
{
  static const struct { GdkModifierType mask; KeySym key; } held[] = {
    { GDK_CONTROL_MASK, XK_Control_L }, { GDK_ALT_MASK, XK_Alt_L }, { GDK_SHIFT_MASK, XK_Shift_L },
  };

  for (guint i = 0; i < G_N_ELEMENTS (held); i++)
    if (modifiers & held[i].mask)
      fake_key (display, XKeysymToKeycode (display, held[i].key), down, 0);
}

void
hands_hold (GdkModifierType modifiers, gboolean down)
{
  hold (modifiers, down);
  settle ();
}

/* Keys come as fast as they are taken in: nobody's fingers wait for a frame. */
static void
press_symbol (KeySym symbol, GdkModifierType modifiers)
{
  KeyCode code = XKeysymToKeycode (display, symbol);

  g_assert_cmpuint (code, !=, 0);
  if (XkbKeycodeToKeysym (display, code, 0, 0) != symbol && XkbKeycodeToKeysym (display, code, 0, 1) == symbol)
    modifiers |= GDK_SHIFT_MASK;
  hold (modifiers, TRUE);
  fake_key (display, code, True, 0);
  fake_key (display, code, False, 0);
  hold (modifiers, FALSE);
  take_in ();
}

void
hands_press (const char *keys)
{
  GdkModifierType modifiers;
  guint key;

  g_assert_true (gtk_accelerator_parse (keys, &key, &modifiers));
  press_symbol (key, modifiers);
  settle ();
}

void
hands_press_until (const char *keys, gboolean (*is_so) (gpointer data), gpointer data)
{
  GdkModifierType modifiers;
  guint key;

  g_assert_true (gtk_accelerator_parse (keys, &key, &modifiers));
  for (guint i = 0; i < MOST_PRESSES && !is_so (data); i++)
    press_symbol (key, modifiers);
  g_assert_true (is_so (data));
  settle ();
}

/* A letter that is on no key is typed as its number. */
static void
type_number (gunichar letter)
{
  g_autofree char *digits = g_strdup_printf ("%x", letter);

  press_symbol (GDK_KEY_u, GDK_CONTROL_MASK | GDK_SHIFT_MASK);
  for (const char *p = digits; *p != '\0'; p++)
    press_symbol (*p, 0);
  press_symbol (GDK_KEY_space, 0);
}

void
hands_type (const char *text)
{
  for (const char *p = text; *p != '\0'; p = g_utf8_next_char (p)) {
    KeySym symbol = gdk_unicode_to_keyval (g_utf8_get_char (p));

    if (XKeysymToKeycode (display, symbol) != 0)
      press_symbol (symbol, 0);
    else
      type_number (g_utf8_get_char (p));
  }
  settle ();
}
