import { z } from 'zod';
import { wrong } from './faults.ts';
import { ShortText } from './kinds.ts';

const AlongM = z
  .number(wrong('not-a-distance'))
  .min(0, wrong('negative'))
  .max(5_000_000, wrong('over', { most: 5000, unit: 'km' }));
const AltitudeM = z
  .number(wrong('not-an-altitude'))
  .min(-430, wrong('under', { least: -430, unit: 'm' }))
  .max(8848, wrong('over', { most: 8848, unit: 'm' }));

/** A point of the smoothed profile: how far along the route, and how high. */
export const ProfilePoint = z.strictObject({ distanceM: AlongM, altitudeM: AltitudeM });
export type ProfilePoint = z.infer<typeof ProfilePoint>;

/** A place on the route. A water source that is struck is not counted on: it may be dry, frozen or foul. */
export const RouteWaypoint = z.strictObject({
  name: ShortText.describe('Name, unique on the route'),
  distanceM: AlongM.describe('How far along the route, m'),
  water: z.boolean().default(false).describe('There is a water source here'),
  struck: z.boolean().default(false).describe('The source is not counted on'),
});
export type RouteWaypoint = z.infer<typeof RouteWaypoint>;

/** A route as it is planned with: the profile after smoothing, and the places along it. */
export const Route = z
  .strictObject({
    name: ShortText,
    profile: z
      .array(ProfilePoint)
      .min(2, wrong('too-few', { least: 2 }))
      .max(4000, wrong('too-many', { most: 4000 })),
    altitudeKnown: z
      .boolean()
      .default(true)
      .describe('False where the track had no elevation, so that the profile is flat by want of knowledge'),
    waypoints: z
      .array(RouteWaypoint)
      .max(400, wrong('too-many', { most: 400 }))
      .default([]),
  })
  .superRefine((route, context) => {
    const fail = (path: (string | number)[], message: string) =>
      context.addIssue({ code: 'custom', path, message });
    route.profile.forEach((point, index) => {
      const before = route.profile[index - 1];
      if (before && point.distanceM <= before.distanceM)
        fail(['profile', index, 'distanceM'], wrong('point-not-further'));
    });
    const endM = route.profile.at(-1)?.distanceM ?? 0;
    const names = new Set<string>();
    route.waypoints.forEach(({ name, distanceM }, index) => {
      if (names.has(name)) fail(['waypoints', index, 'name'], wrong('waypoint-twice', { name }));
      names.add(name);
      if (distanceM > endM)
        fail(['waypoints', index, 'distanceM'], wrong('beyond-route', { endM: Math.round(endM) }));
    });
  });
export type Route = z.infer<typeof Route>;

export const WALKING_TIME_METHODS = ['din-33466', 'tobler', 'naismith'] as const;
export const WalkingTimeMethod = z.enum(WALKING_TIME_METHODS);
export type WalkingTimeMethod = z.infer<typeof WalkingTimeMethod>;

/** Ground underfoot, by the terrain factors of Soule & Goldman 1972, and snow by how deep the foot sinks. */
export const TERRAINS = [
  'blacktop',
  'dirt-road',
  'light-brush',
  'heavy-brush',
  'swampy-bog',
  'loose-sand',
  'firm-snow',
  'soft-snow',
  'deep-snow',
] as const;
export const Terrain = z.enum(TERRAINS);
export type Terrain = z.infer<typeof Terrain>;
