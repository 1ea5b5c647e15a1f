/* A GPX text of 200 000 points, as it is read, laid out, smoothed and split into days. Target: under a second. */
import { hills, syntheticTrack } from '../support/synthetic-track.ts';
import { dayLegs } from '../../src/lib/planning/route/day-legs.ts';
import { makeProfile } from '../../src/lib/planning/route/make-profile.ts';
import { layPath } from '../../src/lib/planning/route/path.ts';
import { placeWaypoints } from '../../src/lib/planning/route/place-waypoints.ts';
import { readGpx } from '../../src/lib/planning/route/read-gpx.ts';

const POINTS = 200_000;
const RUNS = 7;

const points = syntheticTrack({ lengthM: POINTS - 1, stepM: 1, altitudeM: hills(200, 4000), noiseM: 3 });
const xml = [
  '<?xml version="1.0" encoding="UTF-8"?>\n<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">\n',
  ...Array.from(
    { length: 40 },
    (_, i) => `<wpt lat="0.001" lon="${-150 + i / 25}"><name>Spring ${i}</name></wpt>\n`,
  ),
  '<trk><trkseg>\n',
  ...points.map(
    ({ latDeg, lonDeg, elevationM = 0 }) =>
      `<trkpt lat="${latDeg.toFixed(7)}" lon="${lonDeg.toFixed(7)}"><ele>${elevationM.toFixed(1)}</ele><time>2027-07-01T08:00:00Z</time></trkpt>\n`,
  ),
  '</trkseg></trk></gpx>\n',
].join('');

/** Milliseconds of each step, and how many points and pieces come of it. */
function run() {
  const times: [step: string, ms: number][] = [];
  const timed = <T>(step: string, work: () => T): T => {
    const start = performance.now();
    const result = work();
    times.push([step, performance.now() - start]);
    return result;
  };
  const { lines, waypoints } = timed('read', () => readGpx(xml));
  const line = lines[0];
  if (!line) throw new Error('the text has no track');
  const path = timed('lay out', () => layPath(line.points));
  const { profile } = timed('smooth', () => makeProfile(line.points, path));
  const placed = timed('place waypoints', () => placeWaypoints(path, waypoints, path.lengthM));
  const route = { name: line.name, profile, altitudeKnown: true, waypoints: placed.waypoints };
  const pace = { method: 'din-33466', partyFactor: 1, restShare: 0.2 } as const;
  const legs = timed('split into 14 days', () => dayLegs(route, 14, [], pace));
  return {
    times,
    made: `${profile.length} points of profile, ${placed.waypoints.length} waypoints, ${legs.length} legs`,
  };
}

const cpuBefore = process.cpuUsage();
const runs = Array.from({ length: RUNS }, run);
const { user, system } = process.cpuUsage(cpuBefore);
const cpuMs = (user + system) / 1000 / RUNS;
const medianMs = (step: number): number =>
  runs.map(({ times }) => times[step]?.[1] ?? NaN).toSorted((a, b) => a - b)[RUNS >> 1] ?? NaN;
const steps = (runs[0]?.times ?? []).map(([step], index) => [step, medianMs(index)] as const);
const totalMs = steps.reduce((sum, [, ms]) => sum + ms, 0);
const firstMs = (runs[0]?.times ?? []).reduce((sum, [, ms]) => sum + ms, 0);

console.log(`${POINTS} points, ${(xml.length / 1e6).toFixed(1)} MB → ${runs[0]?.made}`);
for (const [step, ms] of steps)
  console.log(
    `${step.padEnd(20)}${ms.toFixed(0).padStart(6)} ms ${((100 * ms) / totalMs).toFixed(0).padStart(4)} %`,
  );
console.log(
  `${'all, median'.padEnd(20)}${totalMs.toFixed(0).padStart(6)} ms; the first time ${firstMs.toFixed(0)} ms; processor time ${cpuMs.toFixed(0)} ms a run`,
);
