# SPDX-License-Identifier: GPL-3.0-or-later
"""A session and a week as iCalendar (RFC 5545): the lines byte by byte, the properties that the RFC asks for, and what
python3-icalendar and python3-dateutil, which share no code with libical, make of it over a change of the clocks: the
same classes at the same instants as `publish --as table` has them (Lisbon changes on 2027-03-28 and 2027-10-31)."""
import csv
import datetime
import io
import json
import pathlib
import re
import tempfile
import zoneinfo

import dateutil.rrule
import dateutil.tz
import icalendar
from publishing import DEMOS, SOURCE, publish, run, timeline
from tap import Tap

UTC = datetime.timezone.utc
SAFETY = ('Warm up first.', 'chest tightness', 'clinician')
WEEK = {
    'format': 'lapwing-week', 'version': 1, 'id': 'w-1', 'title': 'A week; with, marks', 'timezone': 'Europe/Lisbon',
    'from': '2027-01-11', 'until': '2027-11-07', 'closed': ['2027-02-09', {'from': '2027-08-01', 'until': '2027-08-15'}],
    'rooms': [{'id': 'r', 'name': 'Loft, "upper"'}, {'id': 's', 'name': 'Yard'}],
    'coaches': [{'id': 'a', 'name': 'Ana Brook'}, {'id': 'b', 'name': 'Bo Fell'}],
    'classes': [
        {'id': 'mon', 'title': 'Ärm and leg: a title that is long enough to be folded more than once, ' + 'ñ' * 70,
         'kind': 'circuit', 'minutes': 45, 'day': 'mon', 'start': '06:30', 'room': 'r', 'coach': 'a'},
        {'id': 'gap', 'kind': 'night', 'minutes': 30, 'day': 'sun', 'start': '01:30', 'room': 's', 'coach': 'b'},
        {'id': 'tue', 'kind': 'chair', 'minutes': 60, 'day': 'tue', 'start': '18:00', 'for': 'early birds'},
        {'id': 'wait', 'kind': 'chair', 'minutes': 30}],
    'except': [{'class': 'mon', 'date': '2027-01-18', 'cancelled': True},
               {'class': 'mon', 'date': '2027-03-22', 'to': '2027-03-28', 'start': '01:15'},
               {'class': 'mon', 'date': '2027-04-05', 'coach': 'b', 'note': 'Bring a towel.'},
               {'class': 'tue', 'date': '2027-11-02', 'to': '2027-11-09', 'room': 'r'},
               {'class': 'tue', 'date': '2027-01-12', 'to': '2027-01-28', 'start': '07:00'}],
}


def write(folder, week, name='week'):
    path = pathlib.Path(folder, name + '.lapweek')
    path.write_text(json.dumps(week), encoding='utf-8')
    return path


def lines_are_right(tap, name, data):
    raw = data.split(b'\r\n')
    tap.equal(f'{name}: every line ends with CR LF', (raw[-1], [r for r in raw if b'\n' in r or b'\r' in r]), (b'', []))
    tap.equal(f'{name}: no line is longer than 75 bytes', [r for r in raw if len(r) > 75], [])
    tap.equal(f'{name}: no character is cut by a fold', [r for r in raw if r.decode('utf-8', 'replace').count('\ufffd')], [])


def properties_are_there(tap, name, calendar):
    """RFC 5545 §3.6, §3.6.1, §3.6.5: what must be there once."""
    tap.equal(f'{name}: of the calendar', (str(calendar['VERSION']), 'PRODID' in calendar), ('2.0', True))
    zones = {str(z['TZID']) for z in calendar.walk('VTIMEZONE')}
    parts = [part for z in calendar.walk('VTIMEZONE') for part in z.subcomponents]
    tap.equal(f'{name}: of the zone', [p for p in parts if not {'DTSTART', 'TZOFFSETFROM', 'TZOFFSETTO'} <= set(p)], [])
    events = calendar.walk('VEVENT')
    tap.equal(f'{name}: of events', [e['UID'] for e in events if not {'UID', 'DTSTAMP', 'DTSTART', 'DURATION', 'SUMMARY',
                                                                     'DESCRIPTION'} <= set(e)], [])
    tap.equal(f'{name}: the zone of every start is there', {e['DTSTART'].params['TZID'] for e in events} - zones, set())
    tap.equal(f'{name}: the safety words are in every event',
              [e['UID'] for e in events if any(word not in e['DESCRIPTION'] for word in SAFETY)], [])


def zone_of(text):
    """The zone as dateutil reads it from the file itself."""
    block = re.search(r'BEGIN:VTIMEZONE.*?END:VTIMEZONE', text, re.S).group(0)
    with tempfile.NamedTemporaryFile('w', suffix='.ics', newline='') as stream:
        stream.write(f'BEGIN:VCALENDAR\r\n{block}\r\nEND:VCALENDAR\r\n')
        stream.flush()
        return dateutil.tz.tzical(stream.name).get()


def listed(value):
    return [] if value is None else value if isinstance(value, list) else [value]


def naive(stamp):
    return stamp.replace(tzinfo=None)


def expand(data):
    """{(class, instant, minutes)} of all events, and the names of those that replace another."""
    zone = zone_of(data.decode())
    events = icalendar.Calendar.from_ical(data).walk('VEVENT')
    replaced = {(str(e['UID']), naive(e['RECURRENCE-ID'].dt)) for e in events if 'RECURRENCE-ID' in e}
    found = set()
    for event in events:
        uid, start = str(event['UID']), naive(event['DTSTART'].dt)
        starts = [start]
        if 'RRULE' in event:
            rule = event['RRULE']
            assert rule['UNTIL'][0].tzinfo is not None, 'UNTIL is in UTC'
            text = rule.to_ical().decode()
            starts = list(dateutil.rrule.rrulestr(text, dtstart=start.replace(tzinfo=zone)))
            out = {naive(d.dt) for e in listed(event.get('EXDATE')) for d in e.dts}
            starts = [naive(s) for s in starts if naive(s) not in out and (uid, naive(s)) not in replaced]
        for s in starts:
            # Python takes a time that the clock jumps over with the offset before the jump, as RFC 5545 §3.3.5 does.
            instant = s.replace(tzinfo=zoneinfo.ZoneInfo('Europe/Lisbon')).astimezone(UTC)
            seen = s.replace(tzinfo=zone).astimezone(UTC)
            gap = instant.astimezone(zoneinfo.ZoneInfo('Europe/Lisbon')).replace(tzinfo=None) != s
            assert gap or instant == seen, f'{s}: the zone of the file says {seen}, that of the system {instant}'
            found.add((uid.split('@')[0].split('.')[-1], instant, event['DURATION'].dt.seconds // 60))
    return found, replaced


def expected(path, first, last):
    """The same from the tables of all weeks between two dates."""
    zone = zoneinfo.ZoneInfo('Europe/Lisbon')
    found = set()
    day = datetime.date.fromisoformat(first)
    while day <= datetime.date.fromisoformat(last) + datetime.timedelta(days=6):
        table = io.StringIO(publish(path, 'table', '--from', day.isoformat()).decode(), newline='')
        for row in csv.DictReader(table, strict=True):
            if row['state'] == 'held' and first <= row['date'] <= last:
                start = datetime.datetime.fromisoformat(f'{row["date"]}T{row["start"]}').replace(tzinfo=zone)
                found.add((row['class'], start.astimezone(UTC), int(row['minutes'])))
        day += datetime.timedelta(days=7)
    return found


def weeks(tap, folder):
    path = write(folder, WEEK)
    held = expected(path, '2027-01-11', '2027-11-09')
    for first in ('2027-01-11', '2027-01-13', '2027-03-28', '2027-10-31'):
        data = publish(path, 'calendar', '--from', first)
        lines_are_right(tap, f'week from {first}', data)
        properties_are_there(tap, f'week from {first}', icalendar.Calendar.from_ical(data))
        midnight = datetime.datetime.fromisoformat(first).replace(tzinfo=zoneinfo.ZoneInfo('Europe/Lisbon'))
        tap.equal(f'week from {first}: the classes are when they are', expand(data)[0],
                  {o for o in held if o[1] >= midnight})
    data = publish(path, 'calendar', '--from', '2027-01-13')
    text = data.decode().replace('\r\n ', '')
    tap.equal('a series begins on its first day from then on, nominal even in the gap',
              re.findall(r'DTSTART;TZID=Europe/Lisbon:(\S+)\r\nRRULE', text),
              ['20270118T063000', '20270117T013000', '20270119T180000'])
    tap.equal('the last of a series is said in UTC', re.findall(r'UNTIL=(\S+)', text),
              ['20271101T063000Z', '20271107T013000Z', '20271102T180000Z'])
    tap.equal('what is different replaces its week', {d.isoformat() for _, d in expand(data)[1]},
              {'2027-03-22T06:30:00', '2027-04-05T06:30:00', '2027-11-02T18:00:00'})
    tap.equal('a moved start in the gap is one that the clock shows', 'DTSTART;TZID=Europe/Lisbon:20270328T021500' in text,
              True)
    tap.equal('its coach and its note', 'with Bo Fell\\nBring a towel.' in text, True)
    tap.equal('the same bytes again', publish(path, 'calendar', '--from', '2027-01-13'), data)
    later = icalendar.Calendar.from_ical(publish(path, 'calendar', '--from', '2027-06-01')).walk('VEVENT')
    tap.equal('a class keeps its UID', {str(e['UID']) for e in later},
              {'w-1.mon@lapwing', 'w-1.gap@lapwing', 'w-1.tue@lapwing'})
    open_ended = write(folder, {k: v for k, v in WEEK.items() if k not in ('from', 'until', 'except')}, 'open')
    data = publish(open_ended, 'calendar', '--from', '2027-01-11')
    starts = [instant for name, instant, _ in expand(data)[0] if name == 'mon']
    tap.equal('a week without an end goes on for five years', max(starts).year, 2032)
    tap.equal('and needs a first day', run('publish', open_ended, '--as', 'calendar', '-o', '-')[0], 2)
    for wrong in (['--from', 'soon'], ['--from', '2028-01-01'], ['--at', '2027-01-11T10:00']):
        tap.equal(f'{wrong} is wrong use', run('publish', path, '--as', 'calendar', *wrong, '-o', '-')[0], 2)
    data = publish(SOURCE / 'data' / 'demo' / 'kelpline-week.lapweek', 'calendar', '--from', '2027-01-11')
    lines_are_right(tap, 'demo week', data)
    properties_are_there(tap, 'demo week', icalendar.Calendar.from_ical(data))


def sessions(tap):
    when = ['--at', '2027-07-05T18:30', '--timezone', 'America/New_York']
    for demo in DEMOS:
        data = publish(demo, 'calendar', *when)
        lines_are_right(tap, demo.stem, data)
        calendar = icalendar.Calendar.from_ical(data)
        properties_are_there(tap, demo.stem, calendar)
        event, = calendar.walk('VEVENT')
        tap.equal(f'{demo.stem}: it is as long as the session', event['DURATION'].dt.total_seconds(),
                  timeline(demo)['length'])
        tap.equal(f'{demo.stem}: its UID is of the session', str(event['UID']),
                  json.loads(demo.read_text(encoding='utf-8'))['id'] + '@lapwing')
        tap.equal(f'{demo.stem}: the running order', [line for line in
                  (c.split(' ', 1)[1] for c in publish(demo, 'chapter-list').decode().splitlines())
                  if line not in event['DESCRIPTION']], [])
        tap.equal(f'{demo.stem}: when it is', naive(event['DTSTART'].dt).replace(tzinfo=zone_of(data.decode())).
                  astimezone(UTC), datetime.datetime(2027, 7, 5, 22, 30, tzinfo=UTC))
    gap = publish(DEMOS[0], 'calendar', '--at', '2007-03-11T02:30', '--timezone', 'America/New_York').decode()
    tap.equal('a start in the gap, the example of RFC 5545 §3.3.5', 'DTSTART;TZID=America/New_York:20070311T033000' in gap,
              True)
    for wrong in ([], when[:2], when[2:], ['--at', '2027-07-05', *when[2:]], ['--at', '2027-07-05T18:30Z', *when[2:]],
                  ['--at', '2027-07-05T24:00', *when[2:]], ['--at', '2027-02-29T18:30', *when[2:]],
                  [*when[:2], '--timezone', 'Nowhere/City'], [*when, '--from', '2027-01-11']):
        tap.equal(f'{wrong} is wrong use', run('publish', DEMOS[0], '--as', 'calendar', *wrong, '-o', '-')[0], 2)


def main():
    tap = Tap()
    sessions(tap)
    with tempfile.TemporaryDirectory() as folder:
        weeks(tap, folder)
    tap.done()


main()
