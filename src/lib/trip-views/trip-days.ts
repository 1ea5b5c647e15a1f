import type { TripPlan } from '../planning/model/trip-plan.ts';

export type TripDay = { readonly day: number; readonly date: string };

/** The days of a trip, each with its date. */
export const tripDays = ({ card }: TripPlan): TripDay[] => card.days.map(({ day, date }) => ({ day, date }));
