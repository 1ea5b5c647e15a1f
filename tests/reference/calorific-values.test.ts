/**
 * Net heat of combustion by Hess's law from enthalpies of formation at 25 °C, kJ/mol. CODATA Key Values for Thermodynamics 1989: CO2 -393.51, water vapour -241.826. Fuels: NIST Chemistry
 * WebBook, not rechecked: propane -104.7, n-butane -125.6, isobutane -134.2, n-hexane (liquid) -198.7, n-dodecane (liquid) -350.9, ethanol (liquid) -277.6. Atomic masses: C 12.011, H 1.008, O 15.999.
 */
import { describe, expect, it } from 'vitest';
import { NET_CALORIFIC_VALUE } from '../../src/lib/planning/stove/fuels.ts';

const netMJPerKg = (carbon: number, hydrogen: number, oxygen: number, formation: number): number =>
  (carbon * 393.51 + (hydrogen / 2) * 241.826 + formation) /
  (carbon * 12.011 + hydrogen * 1.008 + oxygen * 15.999);

const propane = netMJPerKg(3, 8, 0, -104.7);
const butane = netMJPerKg(4, 10, 0, -125.6);
const isobutane = netMJPerKg(4, 10, 0, -134.2);
const off = (value: number, expected: number) => Math.abs(value / expected - 1);

describe('net calorific values', () => {
  it('of canister gas lies within 0.5 % of its mix, and any mix would within 2 %', () => {
    const gas = NET_CALORIFIC_VALUE['canister-gas'];
    expect(off(gas, 0.8 * isobutane + 0.2 * propane)).toBeLessThan(0.005);
    for (const alone of [propane, butane, isobutane]) expect(off(gas, alone)).toBeLessThan(0.02);
  });

  it('of spirit lies within 0.5 % of 93 % ethanol', () =>
    expect(off(NET_CALORIFIC_VALUE.ethanol, 0.93 * netMJPerKg(2, 6, 1, -277.6))).toBeLessThan(0.005));

  it('of naphtha lies within 1 % of hexane, of kerosene within 3 % of dodecane, as its aromatics give less', () => {
    expect(off(NET_CALORIFIC_VALUE.naphtha, netMJPerKg(6, 14, 0, -198.7))).toBeLessThan(0.01);
    const dodecane = netMJPerKg(12, 26, 0, -350.9);
    expect(off(NET_CALORIFIC_VALUE.kerosene, dodecane)).toBeLessThan(0.03);
    expect(NET_CALORIFIC_VALUE.kerosene).toBeLessThan(dodecane);
  });
});
