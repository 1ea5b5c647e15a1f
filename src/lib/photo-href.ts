import { lotHref } from './lot-href.ts';

/** A picture without its bytes. `keptAt` changes with it. */
export type PhotoMark = { readonly width: number; readonly height: number; readonly keptAt: string };
/** The lots by their codes, and the recipes by their names, that have a picture. */
export type Photographed = {
  readonly lots: Readonly<Record<string, PhotoMark>>;
  readonly recipes: Readonly<Record<string, PhotoMark>>;
};
/** A picture as a page shows it. */
export type ShownPhoto = { readonly href: string; readonly width: number; readonly height: number };

/** @returns the picture of a lot, or of the recipe that it is named after; its address changes with it */
export function lotPhoto(
  { code, recipe }: { readonly code: string; readonly recipe: string },
  { lots, recipes }: Photographed,
): ShownPhoto | undefined {
  const mark = Object.hasOwn(lots, code)
    ? lots[code]
    : Object.hasOwn(recipes, recipe)
      ? recipes[recipe]
      : undefined;
  return mark && shown(`${lotHref(code)}/photo/image`, mark);
}

export const recipePhoto = (id: string, mark: PhotoMark | undefined): ShownPhoto | undefined =>
  mark && shown(`/kitchen/recipes/${id}/photo/image`, mark);

const shown = (href: string, { width, height, keptAt }: PhotoMark): ShownPhoto => ({
  href: `${href}?of=${encodeURIComponent(keptAt)}`,
  width,
  height,
});
