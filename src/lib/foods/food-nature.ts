import type { Allergen } from '../planning/model/allergens.ts';
import type { CookingClass } from '../planning/model/composition.ts';
import type { Diet } from '../planning/model/diets.ts';

/** What a food is by its nature. Left-out allergens: makers differ, so nobody can state them but the label. */
export type Nature = {
  readonly allergens?: readonly Allergen[];
  readonly diets: readonly Diet[];
  readonly cookingClass: CookingClass;
};

const VEGAN: readonly Diet[] = ['vegan', 'no-alcohol'];
const VEGETARIAN: readonly Diet[] = ['vegetarian', 'no-alcohol'];
const NO_ALCOHOL: readonly Diet[] = ['no-alcohol'];
const NEITHER_PORK_NOR_BEEF: readonly Diet[] = ['no-pork', 'no-beef', 'no-alcohol'];
const BEEF: readonly Diet[] = ['no-pork', 'no-alcohol'];
const PORK: readonly Diet[] = ['no-beef', 'no-alcohol'];
/** Rennet may come from a calf's stomach. */
const CHEESE: readonly Diet[] = ['no-pork', 'no-alcohol'];

const open = (diets: readonly Diet[], cookingClass: CookingClass = 'other'): Nature => ({
  diets,
  cookingClass,
});
const states = (
  allergens: readonly Allergen[],
  diets: readonly Diet[],
  cookingClass: CookingClass = 'other',
): Nature => ({ allergens, diets, cookingClass });

/** Something was added, or it was made up of several things: recipes of makers differ. */
const MADE_UP =
  /sauce|seasoned|salad|breaded|batter|flour, |cheese|butter added|with butter|margarine|au gratin|scalloped|home-prepared|home recipe|prepared|from recipe|mix\b|souffle|pancakes|pudding|puffs|rings|french fried|hash brown|o'brien|harvard|pickle|chowchow|catsup|relish|cocktail|cream style|candied|spread|seasoning|pie|salted|pilaf|patties|loaf|gravy|meatless|vegetarian|imitation|substitute|flavou?r|roasted, salt|syrup mix/i;
/** Dried plants other than by freezing are often treated with sulphur dioxide. */
const MAY_BE_SULPHITED =
  /dehydrated|\bdried\b|sun-dried|granules|flakes|candied|maraschino|canned or bottled|grape juice|mushrooms, canned|potatoes, (?:canned|frozen)|horseradish|powder/i;

function vegetable(name: string): Nature {
  if (
    /milk|cheese|butter|egg|souffle|pudding|pancakes/i.test(name) &&
    !/butternut|butterhead|butterbur|eggplant/i.test(name)
  )
    return open(/au gratin|scalloped|souffle/i.test(name) ? NO_ALCOHOL : VEGETARIAN);
  if (/yeast extract/i.test(name)) return open(NO_ALCOHOL);
  const diets = MADE_UP.test(name) && !/unprepared|catsup|pickles?,|relish/i.test(name) ? NO_ALCOHOL : VEGAN;
  const plain = name.replace(/unprepared|drained, prepared/gi, '');
  if (/soybeans/i.test(name) || /^edamame/i.test(name)) return states(['soy'], VEGAN);
  if (
    MADE_UP.test(plain) ||
    /vegetables?, mixed|^tomato juice|(?:vegetable|carrot) juice|succotash/i.test(plain)
  )
    return open(diets);
  if (/^celery|^celeriac/i.test(name)) return states(['celery'], VEGAN);
  if (/^mustard/i.test(name)) return states(['mustard'], VEGAN);
  if (/^tomatoes, sun-dried/i.test(name))
    return /oil/i.test(name) ? open(VEGAN) : states(['sulphites'], VEGAN);
  if (/^mushrooms, shiitake, dried|^pepeao, dried|^fungi|^seaweed|freeze-dried/i.test(name))
    return states([], VEGAN);
  return MAY_BE_SULPHITED.test(plain) ? open(VEGAN) : states([], VEGAN);
}

function fruit(name: string): Nature {
  if (/sulfured|raisins, golden/i.test(name)) return states(['sulphites'], VEGAN);
  if (
    /sauce|blend|nectar|with added|relish|spiced|candied|maraschino|fried/i.test(name) &&
    !/applesauce, canned, unsweetened|added ascorbic/i.test(name)
  )
    return open(VEGAN);
  if (/^(?:dates|figs|raisins|currants|plums|prunes|cranberries)/i.test(name)) return states([], VEGAN);
  return MAY_BE_SULPHITED.test(name) ? open(VEGAN) : states([], VEGAN);
}

function cereal(name: string): Nature {
  if (
    /protein-fortified|chow mein|self-rising|mix\b|vegetable|spinach|incaparina|ready-to-eat|puffed|fortified, with/i.test(
      name,
    )
  )
    return open(/egg/i.test(name) ? VEGETARIAN : NO_ALCOHOL);
  if (
    /rice noodles|pasta, corn|^(?:rice|wild rice|corn|cornmeal|cornstarch|hominy|millet|quinoa|amaranth|buckwheat|sorghum|teff|tapioca|arrowroot)\b|corn grits/i.test(
      name,
    )
  )
    return states([], VEGAN);
  if (/egg|fresh-refrigerated/i.test(name) && !/without egg/i.test(name))
    return states(['wheat', 'gluten', 'egg'], VEGETARIAN);
  if (/\boats?\b|barley|\brye\b/i.test(name)) return states(['gluten'], VEGAN);
  if (/wheat|bulgur|couscous|semolina|spelt|triticale|farina|macaroni|spaghetti|pasta|noodles/i.test(name))
    return states(['wheat', 'gluten'], VEGAN);
  return open(NO_ALCOHOL);
}

function legume(name: string): Nature {
  if (/cellophane|besan|carob flour/i.test(name)) return states([], VEGAN);
  if (/^peanut/i.test(name)) {
    const diets = /reduced|omega|spread/i.test(name) ? NO_ALCOHOL : VEGAN;
    return /roasted|reduced|omega|spread|fortified/i.test(name) ? open(diets) : states(['peanut'], diets);
  }
  if (/^miso/i.test(name)) return states(['soy', 'gluten'], VEGAN);
  if (/^soy sauce made from (?:soy|soy and wheat) \(/i.test(name))
    return states(['soy', 'wheat', 'gluten'], ['vegan']);
  if (/^soy sauce/i.test(name)) return open(['vegan']);
  if (
    /^soybeans|^soy (?:flour|meal|protein)|^tofu, (?:firm|soft|raw|extra firm|hard|fried)|^natto|^okara|^tofu, dried/i.test(
      name,
    )
  )
    return states(['soy'], VEGAN);
  if (/^soybean, curd/i.test(name)) return open(NO_ALCOHOL);
  if (/^soymilk/i.test(name))
    return /original|unsweetened/i.test(name) ? states(['soy'], VEGAN) : open(NO_ALCOHOL);
  if (/^tempeh/i.test(name)) return open(VEGAN);
  if (/^lupin/i.test(name)) return states(['lupin'], VEGAN);
  if (
    /with (?:beef|franks|pork)|baked|refried|chili|hummus|falafel|meat|burger|bacon|sausage|sweetened|yokan|papad|vermicelli|tofu|meatless|vegetarian|beverage|ranch/i.test(
      name,
    )
  )
    return open(
      /hummus|refried beans, canned, vegetarian|plain or vegetarian/i.test(name) ? VEGAN : NO_ALCOHOL,
    );
  return states([], VEGAN);
}

function nutOrSeed(name: string): Nature {
  if (/coconut/i.test(name))
    return /sweetened|creamed|dried|toasted/i.test(name) && !/milk|water/i.test(name)
      ? open(VEGAN)
      : states([], VEGAN);
  if (
    /mixed|formulated|honey|glazed|oil roasted|dry roasted|paste\b|flavor/i.test(name) &&
    !/sesame butter, paste/i.test(name)
  )
    return open(/honey|glazed|formulated|flavor/i.test(name) ? NO_ALCOHOL : VEGAN);
  if (/^nuts/i.test(name)) return states(['nuts'], VEGAN);
  if (/sesame/i.test(name)) return states(['sesame'], VEGAN);
  return /roasted|cottonseed|sisymbrium|butter/i.test(name) ? open(VEGAN) : states([], VEGAN);
}

function spice(name: string): Nature {
  if (/seasoning mix/i.test(name)) return open(NO_ALCOHOL);
  if (/chili powder|curry powder|poultry seasoning|pie spice|horseradish|cider/i.test(name))
    return open(VEGAN);
  if (/celery/i.test(name)) return states(['celery'], VEGAN);
  if (/mustard/i.test(name)) return states(['mustard'], VEGAN);
  if (/red wine|balsamic/i.test(name)) return states(['sulphites'], []);
  if (/vanilla extract/i.test(name)) return /no alcohol/i.test(name) ? open(VEGAN) : states([], ['vegan']);
  return states([], VEGAN);
}

function fatOrOil(name: string): Nature {
  if (/butter, light/i.test(name)) return states(['milk'], VEGETARIAN);
  if (
    /^oil, (?:soybean|cocoa butter|peanut|sesame|walnut|almond|hazelnut|wheat germ|mustard|oat)/i.test(
      name,
    ) ||
    /^oil,/i.test(name)
  ) {
    const of = (pattern: RegExp, allergens: readonly Allergen[]) => (pattern.test(name) ? allergens : []);
    return states(
      [
        ...of(/soybean|lecithin/i, ['soy']),
        ...of(/peanut/i, ['peanut']),
        ...of(/sesame/i, ['sesame']),
        ...of(/walnut|almond|hazelnut/i, ['nuts']),
        ...of(/wheat/i, ['wheat', 'gluten']),
        ...of(/mustard/i, ['mustard']),
        ...of(/\boat\b/i, ['gluten']),
      ],
      VEGAN,
    );
  }
  if (/^fish oil/i.test(name)) return states(['fish'], NEITHER_PORK_NOR_BEEF);
  if (/^lard|bacon grease/i.test(name)) return states([], PORK);
  if (/drippings/i.test(name)) return states([], NO_ALCOHOL);
  if (/^fat, beef/i.test(name)) return states([], BEEF);
  if (/^fat,/i.test(name)) return states([], NEITHER_PORK_NOR_BEEF);
  return open(NO_ALCOHOL);
}

function dairyOrEgg(name: string): Nature {
  if (/^egg/i.test(name)) {
    if (/substitute|eggnog|scrambled|omelet|frozen mixture/i.test(name)) return open(NO_ALCOHOL, 'egg');
    const cooked = /cooked|dried/i.test(name);
    return states(['egg'], VEGETARIAN, cooked ? 'other' : 'egg');
  }
  if (
    /substitute|topping|sauce|with fruit|with vegetables|process|food|product|imitation|chocolate|vanilla|fruit|eggnog|shake|beverage|supplement|pressurized|dressing|caraway|pimento|cream cheese base|fat free|nonfat or|reduced fat|low fat|low sodium|light|dulce/i.test(
      name,
    ) &&
    !/^milk, (?:reduced fat|lowfat|nonfat|dry|canned|fluid)|^yogurt, plain|light whipping|light \(coffee|^milk, buttermilk|cottage, lowfat, [12]% milkfat$/i.test(
      name,
    )
  )
    return open(NO_ALCOHOL);
  if (/cheese|queso/i.test(name)) return states(['milk'], /cream$/i.test(name) ? VEGETARIAN : CHEESE);
  return states(['milk'], /whey/i.test(name) ? CHEESE : VEGETARIAN);
}

const COOKED =
  /cooked|roasted|braised|broiled|stewed|fried|simmered|boiled|baked|grilled|canned|heated(?<!unheated)|microwaved|browned|dried|jellied|smoked|luncheon|steamed|rendered|salted|pickled|kippered/i;
const GROUND_OR_OFFAL =
  /ground|liver|kidney|heart|tongue|tripe|giblets|gizzard|tail|feet|rabbit|variety meats|sausage|formed|flaked|patties/i;
/** Cured and made-up meat: recipes of makers differ. */
const MADE_UP_MEAT =
  /cured|bacon|breaded|batter|flour|patties|seasoned|pre-basted|gravy|roll\b|spread|pate\b|canned|rotisserie|smoked|sausage|tenders|nuggets|sticks|luncheon|formed|dehydrated|meatless|scrapple|game hens, stuffed/i;

function meat(name: string, kind: 'poultry' | 'beef' | 'pork' | 'other'): Nature {
  const cookingClass: CookingClass = COOKED.test(name)
    ? 'other'
    : kind === 'poultry'
      ? 'poultry'
      : GROUND_OR_OFFAL.test(name)
        ? 'minced meat'
        : 'whole meat';
  if (MADE_UP_MEAT.test(name)) return open(NO_ALCOHOL, cookingClass);
  const diets =
    kind === 'pork' || /boar/i.test(name)
      ? PORK
      : kind === 'beef' || /^veal|bison|beefalo|buffalo/i.test(name)
        ? BEEF
        : NEITHER_PORK_NOR_BEEF;
  return states([], diets, cookingClass);
}

function seafood(name: string): Nature {
  const raw = !COOKED.test(name);
  if (
    /breaded|fried|sticks|salad|cakes|gefilte|surimi|imitation|in oil|tomato sauce|in water|with salt added/i.test(
      name,
    )
  )
    return open(NO_ALCOHOL, raw ? 'fish' : 'other');
  const allergen: Allergen = /^crustaceans/i.test(name)
    ? 'crustaceans'
    : /^mollusks/i.test(name)
      ? 'molluscs'
      : 'fish';
  if (/^(?:turtle|frog|jellyfish)/i.test(name)) return open(NO_ALCOHOL, 'fish');
  return states([allergen], NEITHER_PORK_NOR_BEEF, raw ? 'fish' : 'other');
}

function sweet(name: string): Nature {
  if (/^honey/i.test(name)) return states([], VEGETARIAN);
  if (
    /^sugars?, (?:brown|granulated|maple|turbinado)|^molasses|^syrups?, (?:maple|corn|sorghum)|agave|^cocoa, dry powder/i.test(
      name,
    )
  )
    return states([], VEGAN);
  if (/^syrups, malt/i.test(name)) return states(['gluten'], VEGAN);
  if (/^gelatins, dry powder/i.test(name)) return states([], NO_ALCOHOL);
  if (/^sugars, powdered|^jams|^marmalade|^pectin/i.test(name)) return open(VEGAN);
  return open(NO_ALCOHOL);
}

/**
 * Our own statement of what a food of the table is by its nature, from its description. It claims the least: a food whose makers differ
 * states no allergens, and no diet that its recipe decides. Allergens are those of US law and of Regulation (EU) 1169/2011, Annex II; nuts
 * are all tree nuts that US law has ever named, oils count as what they are pressed from. Cross-contact is for the label.
 *
 * @param group the food group of the table
 */
export function natureOf(name: string, group: string): Nature {
  switch (group) {
    case 'Vegetables and Vegetable Products':
      return vegetable(name);
    case 'Fruits and Fruit Juices':
      return fruit(name);
    case 'Cereal Grains and Pasta':
    case 'Breakfast Cereals':
      return cereal(name);
    case 'Legumes and Legume Products':
      return legume(name);
    case 'Nut and Seed Products':
      return nutOrSeed(name);
    case 'Spices and Herbs':
      return spice(name);
    case 'Fats and Oils':
      return fatOrOil(name);
    case 'Dairy and Egg Products':
      return dairyOrEgg(name);
    case 'Poultry Products':
      return meat(name, 'poultry');
    case 'Beef Products':
      return meat(name, 'beef');
    case 'Pork Products':
      return meat(name, 'pork');
    case 'Lamb, Veal, and Game Products':
      return meat(name, 'other');
    case 'Finfish and Shellfish Products':
      return seafood(name);
    case 'Sausages and Luncheon Meats':
      return open(NO_ALCOHOL, /\braw\b|unprepared|fresh, raw/i.test(name) ? 'minced meat' : 'other');
    case 'Sweets':
      return sweet(name);
    case 'Baked Products':
      return /baking soda|yeast|cream of tartar/i.test(name) && /^leavening/i.test(name)
        ? states([], VEGAN)
        : open(/^leavening/i.test(name) ? VEGAN : NO_ALCOHOL);
    case 'Beverages':
      return /^(?:water|coffee, (?:brewed|instant, regular)|tea, (?:black|herb)|carbonated beverage, club)/i.test(
        name,
      )
        ? states([], VEGAN)
        : open(NO_ALCOHOL);
    default:
      return open([]);
  }
}
