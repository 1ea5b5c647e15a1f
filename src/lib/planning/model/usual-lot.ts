/** What of a pouch lot is taken where nobody says it, as common practice (no source): a foil pouch of about a litre with its absorber, and the wait that most dried meals need. */
export const USUAL_LOT = { tareG: 14, steepMin: 15 } as const;
