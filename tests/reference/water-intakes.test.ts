/**
 * Sources: EFSA Panel on Dietetic Products 2010 (abstract), adequate intake of water by age. Institute of Medicine, Dietary Reference Intakes for Water 2005, ch. 4,
 * pp. 128 to 130 and 155: resting in shade at a mean of 30 °C 3.8 (US Army 1959) to 4.7 l (Brown 1947); working 8 h there 9.5 and 11.4 l; twelve days at a mean of 40 °C, 29 %
 * humidity, about 11 l of soldiers who spent 5,500 kcal; heat of 40 °C doubles or trebles the need of temperate weather. Nolte, Noakes & van Vuuren 2010: 383 ± 150 ml an hour drunk at will on a march.
 */
import { describe, expect, it } from 'vitest';
import { drinkOfDay } from '../../src/lib/planning/hydration/drinking.ts';
import { adequateIntakeMl, restWaterMl } from '../../src/lib/planning/hydration/rest-water.ts';
import type { BodyData } from '../../src/lib/planning/model/body.ts';
import { resolveTrip } from '../../src/lib/planning/model/resolve-trip.ts';
import { defaultSettings } from '../../src/lib/planning/model/settings.ts';
import { exampleTrip } from '../support/examples.ts';

describe('adequate intake, food included, l a day', () => {
  it.each<[BodyData, number]>([
    [{ ageY: 3 }, 1.3],
    [{ ageY: 4 }, 1.6],
    [{ ageY: 8 }, 1.6],
    [{ ageY: 9, sex: 'male' }, 2.1],
    [{ ageY: 13, sex: 'female' }, 1.9],
    [{ ageY: 14, sex: 'male' }, 2.5],
    [{ ageY: 14, sex: 'female' }, 2.0],
    [{ ageY: 70, sex: 'male' }, 2.5],
    [{ sex: 'female' }, 2.0],
  ])('of %j is %d', (body, litres) => expect(adequateIntakeMl(body)).toBe(litres * 1000));
});

const settings = defaultSettings();
const drink = (airTemperatureC: number, humidityShare: number, walkingH: number, rateW: number) => {
  const trip = resolveTrip(
    exampleTrip({ dayCount: 1, days: [{ airTemperatureC, humidityShare, walkingH }] }),
  );
  const [day] = trip.days;
  if (!day) throw new Error('no day');
  return drinkOfDay({ body: {} }, day, walkingH, rateW, 0, settings).total.value / 1000;
};

describe('a day in heat', () => {
  it('at rest at 30 °C lies between the two reports', () => {
    const litres = restWaterMl(settings.waterAtRestMl, 30, 0, {}).ml / 1000;
    expect(litres).toBeGreaterThan(3.8);
    expect(litres).toBeLessThan(4.7);
  });

  it('at rest at 40 °C is two to three times that of temperate weather, or a little above', () => {
    const litres = restWaterMl(settings.waterAtRestMl, 40, 0, {}).ml / 1000;
    expect(litres).toBeGreaterThan(2 * 2.25);
    expect(litres).toBeLessThan(3.2 * 2.25);
  });

  it('of 8 h of moderate work at 30 °C is some 9 to 11 l', () => {
    expect(drink(30, 0.5, 8, 425)).toBeGreaterThan(8.5);
    expect(drink(30, 0.5, 8, 425)).toBeLessThan(11.4);
  });

  it('of hard work at 40 °C and 29 % humidity is some 11 l', () => {
    expect(drink(40, 0.29, 8, 500)).toBeGreaterThan(10);
    expect(drink(40, 0.29, 8, 500)).toBeLessThan(11.5);
  });

  it('in the cool an hour of walking is what soldiers drink at will', () => {
    const perHour = (drink(15, 0.5, 5, 300) - drink(15, 0.5, 1, 300)) / 4;
    expect(perHour).toBeGreaterThan(0.383 - 0.15);
    expect(perHour).toBeLessThan(0.383 + 0.15);
  });
});
