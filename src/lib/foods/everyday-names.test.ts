import { expect, it } from 'vitest';
import { matchFood, searchFoods } from './find-food.ts';
import { kitchenFoods } from './kitchen-foods.ts';

/** Ingredients as cooks write them, in British and American English and in German, and the number of the row that each means. */
const EVERYDAY = `
ground beef = 23567
minced beef = 23567
beef mince = 23567
lean minced beef = 23567
stewing beef = 23093
sirloin steak = 13929
ground pork = 10219
pork shoulder = 10070
pork tenderloin = 10060
bacon = 10123
streaky bacon = 10123
ham = 07029
salami = 07071
chorizo = 07019
lamb mince = 17224
diced lamb = 17059
venison = 17164
chicken breast = 05062
chicken thighs = 05096
chicken mince = 05332
ground turkey = 05305
turkey breast = 05219
duck breast = 05316
cod fillet = 15268
salmon fillet = 15236
smoked salmon = 15077
tinned tuna = 15121
sardines = 15088
anchovies = 15002
prawns = 15270
shrimp = 15270
mussels = 15164
eggs = 01123
egg whites = 01124
egg yolks = 01125
egg powder = 01133
milk = 01211
semi-skimmed milk = 01174
skimmed milk powder = 01091
buttermilk = 01088
evaporated milk = 01214
condensed milk = 01095
double cream = 01053
heavy cream = 01053
sour cream = 01056
plain yoghurt = 01116
natural yogurt = 01116
butter = 01001
unsalted butter = 01145
ghee = 01003
cheddar = 01009
parmesan = 01033
mozzarella = 01026
feta = 01019
goat's cheese = 01159
cream cheese = 01017
cottage cheese = 01012
ricotta = 01036
olive oil = 04053
extra virgin olive oil = 04053
vegetable oil = 04044
sunflower oil = 04584
rapeseed oil = 04582
coconut oil = 04047
sesame oil = 04058
lard = 04002
onion = 11282
onions = 11282
red onion = 11282
spring onions = 11291
scallions = 11291
shallots = 11677
leek = 11246
garlic = 11215
garlic cloves = 11215
fresh ginger = 11216
red chilli = 11819
jalapeño = 11979
carrots = 11124
parsnips = 11298
swede = 11435
rutabaga = 11435
beetroot = 11080
celery = 11143
celery sticks = 11143
celeriac = 11141
potatoes = 11352
new potatoes = 11352
sweet potatoes = 11507
instant mash = 11378
tomatoes = 11529
cherry tomatoes = 11529
tinned tomatoes = 11531
canned diced tomatoes = 11531
crushed tomatoes = 11693
passata = 11547
tomato paste = 11546
tomato purée = 11546
sun-dried tomatoes = 11955
red bell pepper = 11821
green pepper = 11333
courgette = 11477
zucchini = 11477
aubergine = 11209
eggplant = 11209
butternut squash = 11485
pumpkin = 11422
cucumber = 11205
mushrooms = 11260
dried shiitake = 11268
broccoli = 11090
cauliflower = 11135
white cabbage = 11109
red cabbage = 11112
sauerkraut = 11439
kale = 11233
spinach = 11457
frozen spinach = 11463
asparagus = 11011
green beans = 11052
French beans = 11052
frozen peas = 11312
sugar snap peas = 11300
sweetcorn = 11167
tinned sweetcorn = 11172
okra = 11278
fennel = 11957
lettuce = 11250
rocket = 11959
arugula = 11959
parsley = 11297
fresh coriander = 11165
cilantro = 11165
chives = 11156
apple = 09003
apples = 09003
pear = 09252
banana = 09040
orange = 09200
orange juice = 09206
lemon juice = 09152
lemon zest = 09156
lime juice = 09160
peach = 09236
dried apricots = 09032
prunes = 09291
strawberries = 09316
raspberries = 09302
blueberries = 09050
dried cranberries = 09079
raisins = 09298
sultanas = 09297
dates = 09087
dried figs = 09094
mango = 09176
pineapple = 09266
avocado = 09037
olives = 09193
white rice = 20444
basmati rice = 20444
brown rice = 20036
risotto rice = 20452
cooked rice = 20445
quinoa = 20035
millet = 20031
couscous = 20028
bulgur wheat = 20012
pearl barley = 20005
rolled oats = 08120
polenta = 20422
plain flour = 20581
all-purpose flour = 20581
wholemeal flour = 20080
cornflour = 20027
cornstarch = 20027
semolina = 20466
pasta = 20499
spaghetti = 20420
macaroni = 20499
egg noodles = 20109
rice noodles = 20133
breadcrumbs = 18079
white bread = 18069
tortillas = 18364
baking powder = 18369
bicarbonate of soda = 18372
dried yeast = 18375
red lentils = 16144
red lentils dry = 16144
green lentils = 16069
split peas = 16085
chickpeas = 16358
dried chickpeas = 16056
kidney beans = 16145
black beans = 16018
cannellini beans = 16051
baked beans = 16006
tofu = 16426
soy sauce = 16123
miso paste = 16112
hummus = 16158
peanuts = 16087
peanut butter = 16098
almonds = 12061
ground almonds = 12062
cashews = 12087
hazelnuts = 12120
walnuts = 12155
pecans = 12142
pine nuts = 12147
sesame seeds = 12023
tahini = 12166
sunflower seeds = 12036
pumpkin seeds = 12014
chia seeds = 12006
linseed = 12220
desiccated coconut = 12108
coconut milk = 12118
salt = 02047
black pepper = 02030
ground cumin = 02014
ground coriander = 02013
turmeric = 02043
paprika = 02028
smoked paprika = 02028
chilli powder = 02009
curry powder = 02015
cinnamon = 02010
ground ginger = 02021
dried oregano = 02027
dried thyme = 02042
fresh basil = 02044
bay leaves = 02004
rosemary = 02063
nutmeg = 02025
cayenne pepper = 02031
mustard = 02046
red wine vinegar = 02068
balsamic vinegar = 02069
vanilla extract = 02050
sugar = 19335
caster sugar = 19335
brown sugar = 19334
icing sugar = 19336
honey = 19296
maple syrup = 19353
cocoa powder = 19165
dark chocolate = 19904
strawberry jam = 19297
ketchup = 11935
mayonnaise = 04025
water = 14411
Zwiebeln = 11282
Knoblauchzehen = 11215
Möhren = 11124
Kartoffeln = 11352
gehackte Tomaten = 11531
Tomatenmark = 11546
Rinderhackfleisch = 23567
Hähnchenbrustfilet = 05062
rote Linsen = 16144
Kichererbsen = 16358
Haferflocken = 08120
Mehl = 20581
Zucker = 19335
Sahne = 01053
Olivenöl = 04053
Paprikapulver = 02028
Kreuzkümmel = 02014
`;
const ROUND_FIGURES = `
beef stock = Beef stock, ready to use
chicken stock = Chicken stock, ready to use
vegetable broth = Vegetable stock, ready to use
stock cube = Stock cube
red wine = Wine, red
pesto = Pesto
garam masala = Mixed ground spices
fish sauce = Fish sauce
`;
const asked = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split(' = ') as [string, string]);
const { foods } = kitchenFoods();

it('the names of everyday ingredients bring the right row first, at least 95 in 100', () => {
  const all = [...asked(EVERYDAY), ...asked(ROUND_FIGURES)];
  expect(all.length).toBeGreaterThanOrEqual(200);
  const wrong = all.filter(([name, means]) => {
    const first = searchFoods(foods, name, 1)[0];
    return first?.number !== means && first?.name !== means;
  });
  expect(wrong.length / all.length, wrong.join(' | ')).toBeLessThanOrEqual(0.05);
});

it('words that change a food, and that no name has, make it a guess', () => {
  for (const name of [
    'vegan feta',
    'elk steak',
    'freeze-dried peas',
    'dried mango',
    'vanilla bean',
    'fried chicken',
  ])
    expect(matchFood(name)?.sure ?? false, name).toBe(false);
});

it('cut, size and quality do not', () => {
  for (const [words, number] of [
    ['2 large ripe tomatoes, roughly chopped', '11529'],
    ['boneless, skinless chicken breasts, cut into bite-sized pieces', '05062'],
    ['Zwiebeln, fein gewürfelt', '11282'],
    ['freshly ground black pepper', '02030'],
    ['raw unsalted cashews', '12087'],
  ] as const)
    expect(matchFood(words), words).toMatchObject({ sure: true, food: { number } });
});
