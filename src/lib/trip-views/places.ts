import { say, text, type Text } from '../texts/say.ts';

/** A page within a place; the overview has no name in the address. */
type PlacePage = { readonly slug: string; readonly label: Text };
type TripPlace = { readonly label: Text; readonly pages: readonly [PlacePage, ...PlacePage[]] };

/** Where things of a trip are found, each place named by what it answers. */
const TRIP_PLACES: readonly TripPlace[] = [
  {
    label: text('Overview'),
    pages: [
      { slug: '', label: text('Overview') },
      { slug: 'menu', label: text('All meals') },
      { slug: 'nutrition', label: text('Nutrition') },
      { slug: 'weighing', label: text('How good is this menu?') },
      { slug: 'what-moves-it', label: text('What affects it most') },
    ],
  },
  {
    label: text('Who and where'),
    pages: [
      { slug: 'party', label: text('Group and days') },
      { slug: 'route', label: text('Route') },
    ],
  },
  { label: text('Packs'), pages: [{ slug: 'loads', label: text('Pack weights') }] },
  { label: text('Water and fuel'), pages: [{ slug: 'water', label: text('Water and fuel') }] },
  {
    label: text('To get'),
    pages: [
      { slug: 'missing', label: text('Shortfall') },
      { slug: 'shopping', label: text('Shopping list') },
      { slug: 'resupply', label: text('Resupply') },
      { slug: 'costs', label: text('Costs') },
    ],
  },
  {
    label: text('On paper'),
    pages: [
      { slug: 'card', label: text('Trail card') },
      { slug: 'packing', label: text('Packing lists') },
    ],
  },
  {
    label: text('Pouches on the way'),
    pages: [
      { slug: 'pouches', label: text('Set aside and pack') },
      { slug: 'afterwards', label: text('After the trip') },
    ],
  },
];

/** A place as a page shows it, in the language around. */
export type ShownPlace = {
  readonly label: string;
  readonly pages: readonly { readonly slug: string; readonly label: string }[];
};

/** The places in the language around, so that no page has to bring their words. */
export const shownPlaces = (): ShownPlace[] =>
  TRIP_PLACES.map(({ label, pages }) => ({
    label: say(label),
    pages: pages.map((page) => ({ slug: page.slug, label: say(page.label) })),
  }));
