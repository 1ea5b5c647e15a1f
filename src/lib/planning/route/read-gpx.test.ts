import { describe, expect, it } from 'vitest';
import { MAX_GPX_CHARACTERS, MAX_GPX_POINTS, readGpx } from './read-gpx.ts';
import { RouteError } from './route-error.ts';
import { routeErrorText, routeRemarkText } from '../../presentation/route-words.ts';

const gpx = (inner: string, attributes = 'version="1.1" xmlns="http://www.topografix.com/GPX/1/1"') =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<gpx creator="a test" ${attributes}>\n${inner}\n</gpx>\n`;
const trkpt = (lat: number, lon: number, inner = '') => `<trkpt lat="${lat}" lon="${lon}">${inner}</trkpt>`;
const track = (inner: string) => gpx(`<trk><trkseg>${inner}</trkseg></trk>`);

function refusal(xml: string): RouteError {
  try {
    readGpx(xml);
  } catch (error) {
    if (error instanceof RouteError) return error;
    throw error;
  }
  throw new Error('was read');
}

describe('a GPX text', () => {
  it('gives its tracks with joined segments, routes and waypoints', () => {
    const { lines, waypoints, left } = readGpx(
      gpx(`
        <metadata><name>Not the name of a track</name></metadata>
        <wpt lat="0.1" lon="-150.2"><ele>900</ele><name>Reed Spring</name><sym>Water</sym><type>source</type></wpt>
        <wpt lat="0.2" lon="-150.3"/>
        <rte><name>By road</name>
          <rtept lat="0" lon="-150"><name>Ford</name></rtept><rtept lat="0.01" lon="-150"><ele>12</ele></rtept>
        </rte>
        <trk><name>  Long
          ridge </name>
          <trkseg>${trkpt(0, -150, '<ele>600.5</ele><time>2027-07-01T08:00:00Z</time>')}${trkpt(0, -150.01, '<ele>-3</ele>')}</trkseg>
          <trkseg></trkseg>
          <trkseg>${trkpt(0, -150.02, '<ele> 1e2 </ele>')}</trkseg>
        </trk>`),
    );
    expect(left).toEqual([]);
    expect(lines.map(({ kind, name }) => [kind, name])).toEqual([
      ['route', 'By road'],
      ['track', 'Long ridge'],
    ]);
    expect(lines[1]?.points).toEqual([
      { latDeg: 0, lonDeg: -150, elevationM: 600.5 },
      { latDeg: 0, lonDeg: -150.01, elevationM: -3 },
      { latDeg: 0, lonDeg: -150.02, elevationM: 100 },
    ]);
    expect(lines[1]?.lengthM).toBeCloseTo(0.02 * 111_319.4908, 2);
    expect(waypoints).toEqual([
      { latDeg: 0.1, lonDeg: -150.2, name: 'Reed Spring', symbol: 'Water', type: 'source' },
      { latDeg: 0.2, lonDeg: -150.3, name: '', symbol: '', type: '' },
      { latDeg: 0, lonDeg: -150, name: 'Ford', symbol: '', type: '' },
    ]);
  });

  it('may be GPX 1.0, have a namespace prefix, a byte order mark, CDATA and escaped characters', () => {
    const old = gpx(
      `<trk><name>A &amp; B</name><trkseg>${trkpt(0, 1)}${trkpt(0, 2)}</trkseg></trk>`,
      'version="1.0"',
    );
    expect(readGpx(`\uFEFF${old}`).lines[0]?.name).toBe('A & B');
    const prefixed = `<g:gpx xmlns:g="http://www.topografix.com/GPX/1/1"><g:trk><g:name><![CDATA[<Ridge>]]></g:name><g:trkseg>
      <g:trkpt lat="0" lon="1"/><g:trkpt lat="0" lon="2"/></g:trkseg></g:trk></g:gpx>`;
    expect(readGpx(prefixed).lines[0]).toMatchObject({
      name: '<Ridge>',
      points: [{ lonDeg: 1 }, { lonDeg: 2 }],
    });
  });

  it('is read without its extensions, whatever they are called', () => {
    const { lines } = readGpx(
      track(
        trkpt(
          0,
          1,
          '<ele>10</ele><extensions><ele>99</ele><x:ele xmlns:x="y">98</x:ele><trkpt lat="99"/></extensions>',
        ) + trkpt(0, 2),
      ),
    );
    expect(lines[0]?.points.map((point) => point.elevationM)).toEqual([10, undefined]);
  });

  it('keeps points whose elevation is missing or cannot be read', () => {
    const { lines } = readGpx(
      track(trkpt(0, 1, '<ele>NaN</ele>') + trkpt(0, 2, '<ele></ele>') + trkpt(0, 3)),
    );
    expect(lines[0]?.points.map((point) => point.elevationM)).toEqual([undefined, undefined, undefined]);
  });

  it('gives nameless lines a name and lists what is too short to walk', () => {
    const pair = trkpt(0, 1) + trkpt(0, 2);
    const { lines, left } = readGpx(
      gpx(
        `<trk><trkseg>${pair}</trkseg></trk><trk/><trk><name>Dot</name><trkseg>${trkpt(0, 1)}</trkseg></trk><trk><trkseg>${pair}</trkseg></trk>`,
      ),
    );
    expect(lines.map((line) => line.name)).toEqual(['Track 1', 'Track 2']);
    expect(left.map(routeRemarkText)).toEqual([
      'The track "Track 2" has no point; it takes two to walk.',
      'The track "Dot" has only one point; it takes two to walk.',
    ]);
  });

  it('cuts a name at 120 characters, and not through one', () => {
    const name = `${'x'.repeat(119)}😀`;
    expect(
      readGpx(gpx(`<trk><name>${name}</name><trkseg>${trkpt(0, 1)}${trkpt(0, 2)}</trkseg></trk>`)).lines[0]
        ?.name,
    ).toBe('x'.repeat(119));
  });
});

describe('what cannot be used is refused, saying what, where and what to do:', () => {
  it.each([
    ['nothing', '  \n', /^The file is empty\. Choose/],
    ['a photo', '\xFF\xD8\xFF\xE0\0\x10JFIF', /^Line 1: this is not well-formed XML/],
    ['plain text', 'lat,lon\n1,2\n', /^Line 3: this is not well-formed XML/],
    [
      'a cut-off file',
      gpx(`<trk><trkseg>\n${trkpt(0, 1)}\n`).slice(0, 200),
      /^Line \d+: this is not well-formed XML \(.*\)\. The file is damaged, cut off/,
    ],
    [
      'crossed tags',
      gpx('<trk>\n<trkseg></trk></trkseg>'),
      /^Line 4: this is not well-formed XML \(unexpected close tag\)/,
    ],
    ['other XML', '<kml>\n<Document/></kml>', /^Line 1: the file is XML, but a <kml>, not a <gpx>\. Export/],
    ['no track', gpx(''), /has no track and no route/],
    [
      'waypoints only',
      gpx('<wpt lat="1" lon="1"/>'),
      /^The file has 1 waypoint but no track and no route\. Export the track as well/,
    ],
    [
      'one point',
      gpx(`<trk><name>Dot</name><trkseg>${trkpt(0, 1)}</trkseg></trk>`),
      /^The track "Dot" has only one point/,
    ],
    [
      'a latitude off the globe',
      track(`\n${trkpt(91, 1)}`),
      /^Line 4: lat="91" is not a number of degrees from -90 to 90\. Correct it/,
    ],
    ['a longitude off the globe', track(trkpt(0, -180.5)), /^Line 3: lon="-180.5" is not/],
    ['a decimal comma', track('<trkpt lat="1,5" lon="2"/>'), /^Line 3: lat="1,5" is not/],
    ['a point without longitude', track('<trkpt lat="1"/>'), /^Line 3: a <trkpt> has no lon\./],
    ['tags without end', '<gpx>' + '<a>'.repeat(2_000_000), /^Line 1: the file nests more than 100 elements/],
    ['an empty latitude', gpx('<wpt lat="" lon="1"/>'), /^Line 3: a <wpt> has no lat\./],
  ])('%s', (_, xml, message) => {
    expect(routeErrorText(refusal(xml))).toMatch(message);
  });

  it('names the line by number as well', () => {
    expect(refusal(track(`\n\n${trkpt(91, 1)}`)).where.line).toBe(5);
  });

  it('a DOCTYPE, so that no entity is ever expanded', () => {
    const bomb = `<!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>\n<gpx><trk><name>&b;</name></trk></gpx>`;
    expect(routeErrorText(refusal(bomb))).toMatch(/^Line 1: the file has a DOCTYPE.*Remove it\.$/);
    const outside = `<!DOCTYPE gpx SYSTEM "file:///etc/passwd">\n<gpx/>`;
    expect(routeErrorText(refusal(outside))).toMatch(/DOCTYPE/);
    expect(routeErrorText(refusal(gpx('<trk><name>&b;</name></trk>')))).toMatch(/undefined entity/);
  });

  it('a file too large, in characters or points', { timeout: 120_000 }, () => {
    expect(routeErrorText(refusal(`<gpx>${' '.repeat(MAX_GPX_CHARACTERS)}</gpx>`))).toMatch(
      /^The file has 64 million characters; at most 64 million are read\. Thin out/,
    );
    const points = '<trkpt lat="0" lon="0"/>'.repeat(MAX_GPX_POINTS + 1);
    expect(routeErrorText(refusal(track(points)))).toMatch(/more than 1000000 points\. Thin out/);
  });
});
