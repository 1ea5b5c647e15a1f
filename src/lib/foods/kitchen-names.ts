/**
 * What cooks call the foods of the table, in British and American English and in German: the number of a food, then its names.
 * Case, accents, order of words and plurals do not matter (`food-words.ts`). The names are our own; a name stands at one food only, the one
 * that most cooks mean by it.
 */
export const KITCHEN_NAMES = String.raw`
# Water, drinks
14411 water, tap water, cold water, hot water, boiling water, warm water, lukewarm water, Wasser, kaltes Wasser, heisses Wasser, kochendes Wasser, lauwarmes Wasser
14209 coffee, brewed coffee, black coffee, espresso, Kaffee
14214 instant coffee, coffee powder, espresso powder, instant coffee granules, Instantkaffee, Kaffeepulver
14355 tea, black tea, Tee, Schwarztee
14381 herbal tea, Kräutertee
14121 sparkling water, soda water, Mineralwasser, Sprudel
14192 drinking chocolate, hot chocolate powder, cocoa mix, Trinkschokolade, Kakaogetränkepulver

# Vegetables
11282 onion, yellow onion, brown onion, white onion, red onion, cooking onion, spanish onion, Zwiebel, Zwiebeln, rote Zwiebel, rote Zwiebeln, weisse Zwiebel, Speisezwiebel, Gemüsezwiebel, Gemüsezwiebeln
11284 dried onion, onion flakes, dehydrated onion, dried minced onion, Röstzwiebeln getrocknet, getrocknete Zwiebeln, Zwiebelflocken
11287 frozen onion, chopped frozen onion
11291 spring onion, scallion, green onion, salad onion, Frühlingszwiebel, Frühlingszwiebeln, Lauchzwiebel, Lauchzwiebeln
11294 sweet onion, vidalia onion
11677 shallot, banana shallot, Schalotte, Schalotten
11640 freeze dried shallot
11246 leek, Lauch, Porree
11624 freeze dried leek
11215 garlic, garlic clove, clove garlic, fresh garlic, Knoblauch, Knoblauchzehe, Knoblauchzehen
11216 ginger, fresh ginger, root ginger, ginger root, Ingwer, frischer Ingwer, Ingwerwurzel
11819 red chilli, chilli, chilli pepper, red chili, red chile, fresh chilli, hot pepper, red chilli pepper, red chili pepper, chili pepper, thai chili, bird eye chilli, Chili, Chilischote, Chilischoten, rote Chili, rote Chilischote, Peperoni, Peperoncino, Chili frisch
11670 green chilli, green chili, green chile, green chilli pepper, green chili pepper, serrano chili, grüne Chili, grüne Chilischote
11979 jalapeno, jalapeno pepper, jalapeno chili
11632 pickled jalapeno, canned jalapeno, tinned jalapeno, jarred jalapeno
11980 canned green chilies, canned green chiles, tinned green chillies, canned green chili, diced green chile can
11962 dried chilli, dried red chilli, dried chile, dried red chili, getrocknete Chili, getrocknete Chilischote
11978 ancho chili, ancho chile, ancho
11124 carrot, Karotte, Karotten, Möhre, Möhren, Mohrrübe, Mohrrüben, Rüebli
11130 frozen carrot
11128 canned carrot, tinned carrot
11960 baby carrot
11683 dried carrot, dehydrated carrot, getrocknete Karotten
11298 parsnip, Pastinake, Pastinaken
11564 turnip, Rübe, weisse Rübe, Mairübe
11435 swede, rutabaga, Steckrübe, Steckrüben, Kohlrübe
11080 beetroot, beet, raw beetroot, Rote Bete, rote Beete, Rande
11081 cooked beetroot, cooked beet, vacuum packed beetroot, gekochte rote Bete
11084 canned beet, tinned beetroot
11609 pickled beetroot, pickled beet
11141 celeriac, celery root, Knollensellerie, Sellerieknolle, Sellerie
11143 celery, celery stick, celery stalk, celery rib, stick celery, Staudensellerie, Stangensellerie, Selleriestange
11352 potato, floury potato, waxy potato, new potato, baking potato, maincrop potato, yukon gold potato, gold potato, Kartoffel, Kartoffeln, festkochende Kartoffeln, mehligkochende Kartoffeln, Erdäpfel, vorwiegend festkochende Kartoffeln
11353 russet potato
11354 white potato
11355 red potato
11367 boiled potato, cooked potato, potato boiled, gekochte Kartoffeln, Pellkartoffeln, Salzkartoffeln
11674 baked potato, jacket potato
11378 potato flakes, instant mash, instant potato, instant mashed potato, mashed potato powder, mashed potato flakes, dried potato flakes, potato flakes dry, dehydrated potato, Kartoffelflocken, Kartoffelpüreepulver
11657 mashed potato, Kartoffelpüree, Kartoffelbrei
11413 potato flour
11402 frozen chips, oven chips, frozen french fries, french fries, Pommes, Pommes frites
11390 hash brown, hash browns, frozen hash brown
11507 sweet potato, Süsskartoffel, Süsskartoffeln, Batate
11510 boiled sweet potato, cooked sweet potato, sweet potato boiled, gekochte Süsskartoffel
11508 baked sweet potato
11529 tomato, fresh tomato, cherry tomato, plum tomato, vine tomato, roma tomato, grape tomato, beef tomato, beefsteak tomato, Tomate, Tomaten, Kirschtomaten, Cherrytomaten, Cocktailtomaten, frische Tomaten, Strauchtomaten, Fleischtomaten
11531 tinned tomato, canned tomato, chopped tomato tin, tinned chopped tomato, canned diced tomato, diced tomato, can diced tomato, canned whole tomato, whole peeled tomato, tinned plum tomato, plum tomato tin, peeled tomato, tomato tinned, tin tomato, can tomato, canned chopped tomato, fire roasted tomato, canned fire roasted diced tomato, tinned cherry tomato, Dosentomaten, Dose Tomaten, gehackte Tomaten, stückige Tomaten, geschälte Tomaten, Pizzatomaten, Tomaten aus der Dose, Tomatenstücke
11693 crushed tomato, canned crushed tomato, tinned crushed tomato, can crushed tomato
11533 stewed tomato, canned stewed tomato
11537 canned tomato with green chili, diced tomato with green chile, tomato with green chilies
11547 passata, tomato passata, sieved tomato, tomato puree canned, strained tomato, passierte Tomaten, Passata, Tomatenpassata, Polpa
11546 tomato paste, tomato puree, double concentrate tomato puree, concentrated tomato puree, tomato concentrate, sun dried tomato puree, Tomatenmark, Tomatenpüree
11549 tomato sauce, canned tomato sauce, tinned tomato sauce, pizza sauce, Tomatensauce, Tomatensosse
11548 tomato powder, Tomatenpulver
11955 sun dried tomato, sundried tomato, dried tomato, tomato dried, getrocknete Tomaten
11956 sun dried tomato in oil, sundried tomato in oil, getrocknete Tomaten in Öl, eingelegte getrocknete Tomaten
11540 tomato juice, Tomatensaft
11527 green tomato
11954 tomatillo
11821 red pepper, red bell pepper, red sweet pepper, red capsicum, bell pepper, sweet pepper, capsicum, pepper red bell, romano pepper, rote Paprika, Paprikaschote, Paprikaschoten, rote Paprikaschote, rote Paprikaschoten, Spitzpaprika
11333 green pepper, green bell pepper, green capsicum, pepper green bell, green sweet pepper, grüne Paprika, grüne Paprikaschote
11951 yellow pepper, yellow bell pepper, orange pepper, orange bell pepper, gelbe Paprika, gelbe Paprikaschote
11917 frozen pepper, frozen mixed pepper
11916 canned red pepper, roasted red pepper, jarred roasted red pepper, roasted pepper jar
11931 freeze dried red pepper, freeze dried pepper
11634 freeze dried green pepper
11943 pimento, pimiento
11477 courgette, zucchini, Zucchini, Zucchetti, summer squash
11209 aubergine, eggplant, brinjal, Aubergine, Auberginen, Melanzani
11422 pumpkin, Kürbis
11424 canned pumpkin, tinned pumpkin, pumpkin puree, canned pumpkin puree, Kürbispüree
11485 butternut squash, butternut, Butternusskürbis, Butternut Kürbis
11643 winter squash, squash, hokkaido pumpkin, Hokkaido, Hokkaidokürbis, Hokkaido Kürbis
11482 acorn squash
11492 spaghetti squash
11205 cucumber, Gurke, Salatgurke, Gurken
11937 gherkin, dill pickle, pickled cucumber, pickle, cornichon, Essiggurke, Essiggurken, Gewürzgurke, Gewürzgurken, saure Gurken
11260 mushroom, white mushroom, button mushroom, closed cup mushroom, champignon, Champignon, Champignons, Pilze, weisse Champignons
11266 chestnut mushroom, brown mushroom, cremini mushroom, crimini mushroom, baby bella mushroom, braune Champignons
11265 portobello mushroom, portabella mushroom, portobello
11264 canned mushroom, tinned mushroom, Champignons aus der Dose
11238 shiitake mushroom, shiitake, shiitake fresh
11268 dried shiitake, dried shiitake mushroom, dried mushroom, mushroom shiitake dried, dried porcini, dried porcini mushroom, porcini, getrocknete Steinpilze, getrocknete Shiitake, getrocknete Pilze
11987 oyster mushroom, Austernpilze, Austernseitlinge
11239 chanterelle, Pfifferlinge
11090 broccoli, broccoli floret, tenderstem broccoli, Brokkoli, Broccoli
11092 frozen broccoli, TK Brokkoli
11135 cauliflower, cauliflower floret, Blumenkohl, Karfiol
11109 cabbage, white cabbage, green cabbage, Weisskohl, Weisskraut, Spitzkohl, Kohl
11112 red cabbage, Rotkohl, Rotkraut, Blaukraut
11114 savoy cabbage, Wirsing
11116 pak choi, bok choy, Pak Choi
11119 chinese cabbage, chinese leaf, napa cabbage, Chinakohl
11098 brussels sprout, sprouts, Rosenkohl
11439 sauerkraut, Sauerkraut
11233 kale, curly kale, cavolo nero, lacinato kale, tuscan kale, Grünkohl, Schwarzkohl
11161 collard, collard greens, spring greens
11147 chard, swiss chard, Mangold
11457 spinach, baby spinach, fresh spinach, spinach leaf, Spinat, frischer Spinat, Blattspinat, Babyspinat
11463 frozen spinach, frozen leaf spinach, frozen chopped spinach, TK Spinat, gefrorener Spinat, Rahmspinat ohne Rahm, tiefgekühlter Spinat, TK Blattspinat
11461 canned spinach, tinned spinach
11011 asparagus, green asparagus, Spargel, grüner Spargel
11015 canned asparagus
11052 green bean, french bean, fine bean, string bean, runner bean, snap bean, haricot vert, grüne Bohnen, Buschbohnen, Stangenbohnen, Prinzessbohnen, Brechbohnen
11060 frozen green bean, frozen french bean, TK Bohnen
11056 canned green bean, tinned green bean
11304 fresh pea, garden pea, shelled pea, pea, green pea, peas green, Erbsen, frische Erbsen
11312 frozen pea, petit pois, frozen green pea, peas green frozen, TK Erbsen, tiefgekühlte Erbsen, gefrorene Erbsen
11308 canned pea, tinned pea, Erbsen aus der Dose
11300 mangetout, sugar snap pea, snow pea, sugar snap, Zuckerschoten, Kaiserschoten
11322 peas and carrots frozen, frozen pea and carrot
11583 frozen mixed vegetable, mixed vegetable, frozen vegetable, mixed veg, frozen mixed veg, frozen veg, vegetable, seasonal vegetable, veg, Gemüse, Gemüsemischung, TK Gemüse, Mischgemüse, Suppengemüse
11581 canned mixed vegetable
11088 broad bean, fava bean fresh, fresh broad bean, dicke Bohnen, Saubohnen
11450 green soybean
11211 edamame, frozen edamame
11167 fresh corn, corn, sweetcorn, sweet corn, corn on the cob, corn cob, ear corn, ear of corn, corn kernel, Mais, Maiskolben, Zuckermais
11178 frozen corn, frozen sweetcorn, frozen corn kernel, TK Mais
11172 canned corn, tinned sweetcorn, tinned corn, canned sweetcorn, sweetcorn tinned drained, can corn, canned whole kernel corn, whole kernel corn, can sweetcorn, Mais aus der Dose, Dosenmais, Dose Mais
11174 cream style corn, creamed corn, canned creamed corn
11278 okra, lady finger
11957 fennel, fennel bulb, Fenchel, Fenchelknolle
11007 artichoke, globe artichoke, Artischocke, Artischocken
11241 kohlrabi, Kohlrabi
11429 radish, Radieschen
11430 daikon, mooli, white radish, Rettich
11226 jerusalem artichoke, Topinambur
11250 lettuce, butterhead lettuce, Kopfsalat, Salat
11251 romaine, romaine lettuce, cos lettuce, little gem lettuce, Römersalat
11252 iceberg lettuce, iceberg, Eisbergsalat
11253 leaf lettuce, salad leaf, mixed salad leaf
11959 rocket, arugula, Rucola
11190 lamb lettuce, corn salad, Feldsalat
11952 radicchio, Radicchio
11151 chicory, endive belgian, Chicorée
11591 watercress, Brunnenkresse
11203 cress, Kresse
11043 bean sprout, beansprout, mung bean sprout, Sojasprossen, Mungbohnensprossen, Sprossen
11028 bamboo shoot, canned bamboo shoot, Bambussprossen
11590 water chestnut, canned water chestnut, tinned water chestnut, Wasserkastanien
11518 taro
11601 yam
11134 cassava, yuca, manioc, Maniok
11603 jicama
11972 lemongrass, lemon grass, Zitronengras
11445 kelp, kombu, Kombu
11446 nori, laver, Nori
11669 wakame, Wakame
11297 parsley, fresh parsley, flat leaf parsley, curly parsley, italian parsley, parsley fresh, Petersilie, frische Petersilie, glatte Petersilie, krause Petersilie
11625 freeze dried parsley
11165 coriander leaf, cilantro, fresh coriander, fresh cilantro, coriander leaves, coriander, coriander fresh, chopped coriander, cilantro leaf, Koriander, frischer Koriander, Koriandergrün
11156 chives, chive, fresh chive, Schnittlauch, Schnittlauchröllchen
11615 freeze dried chive, dried chive
11974 grape leaf, vine leaf
11961 heart of palm, Palmherzen
11935 ketchup, tomato ketchup, catsup, Ketchup, Tomatenketchup
11945 pickle relish, relish, sweet relish, sweet pickle relish
43406 yeast extract, yeast extract spread, Hefeextrakt

# Fruit
09003 apple, eating apple, cooking apple, red apple, green apple, apple with skin, Apfel, Äpfel
09502 granny smith apple, granny smith
09011 dried apple, apple dried, dried apple ring, apple ring, Apfelringe, getrocknete Äpfel, getrocknete Apfelringe
09401 apple sauce, applesauce, unsweetened apple sauce, apple sauce unsweetened, unsweetened applesauce, Apfelmus, Apfelmark
09016 apple juice, Apfelsaft, cider apple
09252 pear, Birne, Birnen
09259 dried pear, getrocknete Birnen
09040 banana, ripe banana, Banane, Bananen, reife Banane
09041 banana powder, dehydrated banana, dried banana, freeze dried banana, getrocknete Bananen
09277 plantain, Kochbanane, Kochbananen
09200 orange, Orange, Orangen, Apfelsine
09206 orange juice, fresh orange juice, Orangensaft
09216 orange zest, orange peel, zest orange, orange rind, Orangenschale, Orangenabrieb
09218 mandarin, tangerine, satsuma, Mandarine, Mandarinen
09433 clementine, Clementine, Clementinen
09150 lemon, Zitrone, Zitronen, Biozitrone
09152 lemon juice, juice lemon, fresh lemon juice, Zitronensaft, Saft Zitrone
09156 lemon zest, lemon peel, zest lemon, grated lemon zest, lemon rind, Zitronenschale, Zitronenabrieb, Abrieb Zitrone
09159 lime, Limette, Limetten
09160 lime juice, juice lime, fresh lime juice, Limettensaft, Saft Limette
09111 grapefruit, Grapefruit
09236 peach, Pfirsich, Pfirsiche
09241 canned peach, tinned peach, Dosenpfirsiche
09246 dried peach, getrocknete Pfirsiche
09191 nectarine, Nektarine, Nektarinen
09021 apricot, fresh apricot, Aprikose, Aprikosen, Marille, Marillen
09032 dried apricot, apricot dried, ready to eat apricot, getrocknete Aprikosen, Trockenaprikosen
09279 plum, Pflaume, Pflaumen, Zwetschge, Zwetschgen
09291 prune, dried plum, pitted prune, Dörrpflaumen, Trockenpflaumen, Backpflaumen
09070 cherry, sweet cherry, Kirsche, Kirschen, Süsskirschen
09063 sour cherry, Sauerkirschen
09044 dried cherry, dried sour cherry, getrocknete Kirschen
09316 strawberry, fresh strawberry, Erdbeere, Erdbeeren
09318 frozen strawberry, TK Erdbeeren
09302 raspberry, fresh raspberry, frozen raspberry, Himbeere, Himbeeren, TK Himbeeren
09050 blueberry, fresh blueberry, Heidelbeeren, Blaubeeren
09054 frozen blueberry, TK Heidelbeeren
09163 dried blueberry, getrocknete Heidelbeeren
09042 blackberry, Brombeeren
09048 frozen blackberry
09083 blackcurrant, black currant, schwarze Johannisbeeren
09084 redcurrant, red currant, Johannisbeeren, rote Johannisbeeren
09107 gooseberry, Stachelbeeren
09078 cranberry, fresh cranberry, Preiselbeeren, frische Cranberries
09079 dried cranberry, cranberry dried sweetened, sweetened dried cranberry, getrocknete Cranberrys, getrocknete Cranberries
09081 cranberry sauce
09132 grape, red grape, green grape, seedless grape, Trauben, Weintrauben
09298 raisin, raisins seedless, Rosinen, Sultaninen
09297 sultana, golden raisin
09085 currant, dried currant, zante currant, Korinthen
09421 medjool date, Medjool Datteln
09087 date, dried date, dates dried, pitted date, Datteln, getrocknete Datteln
09089 fig, fresh fig, Feige, Feigen
09094 dried fig, figs dried, getrocknete Feigen
09176 mango, Mango, Mangos
09266 pineapple, fresh pineapple, Ananas, frische Ananas
09268 canned pineapple, tinned pineapple, pineapple in juice, pineapple chunk, pineapple tidbit, crushed pineapple, Dosenananas, Ananas aus der Dose
09273 pineapple juice, Ananassaft
09148 kiwi, kiwi fruit, kiwifruit, Kiwi, Kiwis
09037 avocado, Avocado, Avocados
09226 papaya, Papaya
09326 watermelon, Wassermelone
09181 cantaloupe, melon, cantaloupe melon, Melone, Honigmelone
09286 pomegranate, pomegranate seed, Granatapfel, Granatapfelkerne
09307 rhubarb, Rhabarber
09296 quince, Quitte
09231 passion fruit, Maracuja, Passionsfrucht
09193 black olive, olive, ripe olive, pitted black olive, kalamata olive, olives black tinned, Oliven, schwarze Oliven
09195 green olive, pitted green olive, grüne Oliven
09322 tamarind
09144 jackfruit
09130 grape juice, Traubensaft
43382 cranberry juice
09426 candied peel, mixed peel, candied fruit, Zitronat, Orangeat

# Cereals
20444 rice, white rice, long grain rice, long grain white rice, basmati rice, basmati, jasmine rice, rice white dry, white long grain rice, thai rice, Reis, Langkornreis, Basmatireis, Basmati, Jasminreis, weisser Reis
20452 short grain rice, risotto rice, arborio rice, arborio, carnaroli rice, sushi rice, pudding rice, paella rice, short grain white rice, Risottoreis, Milchreis, Rundkornreis, Sushireis, Paellareis
20450 medium grain rice
20446 parboiled rice, converted rice, easy cook rice, Parboiled Reis
20048 instant rice, precooked rice, quick cook rice, minute rice, rice instant, Schnellkochreis, Expressreis
20445 cooked rice, cooked white rice, boiled rice, rice white cooked, steamed rice, leftover rice, rice cooked, cooked basmati rice, cooked long grain rice, cooked jasmine rice, gekochter Reis, Reis gekocht
20036 brown rice, long grain brown rice, wholegrain rice, brown basmati rice, rice brown dry, Vollkornreis, Naturreis
20037 cooked brown rice, rice brown cooked
20088 wild rice, Wildreis
20054 sticky rice, glutinous rice, Klebreis
20061 rice flour, white rice flour, Reismehl
20133 rice noodle, rice stick, rice vermicelli, vermicelli rice, flat rice noodle, pad thai noodle, rice noodles dry, dried rice noodle, Reisnudeln, Glasnudeln Reis
16082 glass noodle, cellophane noodle, bean thread noodle, mung bean noodle, Glasnudeln
20035 quinoa, Quinoa
20137 cooked quinoa, quinoa cooked, gekochte Quinoa
20031 millet, Hirse
20032 cooked millet, millet cooked
20009 buckwheat groats, buckwheat, kasha, roasted buckwheat, Buchweizen
20010 cooked buckwheat, buckwheat groats cooked
20011 buckwheat flour, Buchweizenmehl
20001 amaranth, Amaranth
20142 teff
20140 spelt, spelt grain, farro, Dinkel, Dinkelkörner
20422 polenta, cornmeal, maize meal, instant polenta, polenta maize meal dry, yellow cornmeal, quick cook polenta, Polenta, Maisgriess
20016 corn flour whole grain, maize flour, Maismehl
20317 masa harina, masa
20027 cornflour, cornstarch, corn starch, maize starch, corn flour, Speisestärke, Maisstärke, Stärke, Stärkemehl
08160 grits, hominy grits, corn grits
20030 hominy
20068 tapioca, tapioca pearl, Tapioka
20003 arrowroot, arrowroot powder
20581 flour, plain flour, all purpose flour, white flour, wheat flour, all purpose unbleached flour, wheat flour white, unbleached flour, Mehl, Weizenmehl, Mehl Type 405, Weizenmehl Type 405, Weizenmehl Type 550
20129 bread flour, strong flour, strong white flour, strong white bread flour, strong bread flour, white bread flour, Brotmehl
20084 cake flour, pastry flour
20082 self raising flour, self rising flour
20080 wholemeal flour, whole wheat flour, wholewheat flour, wheat flour wholemeal, wholemeal bread flour, Vollkornmehl, Weizenvollkornmehl
20466 semolina, wheat semolina, durum semolina, Griess, Hartweizengriess, Weichweizengriess, Dinkelgriess
20078 wheat germ, Weizenkeime
20077 wheat bran, bran, Weizenkleie
48052 wheat gluten, vital wheat gluten, gluten flour, seitan powder, Seitanpulver, Gluten
20063 dark rye flour, wholemeal rye flour, Roggenvollkornmehl
20064 rye flour, medium rye flour, Roggenmehl
20499 pasta, dry pasta, dried pasta, penne, fusilli, macaroni, elbow macaroni, rigatoni, farfalle, pasta shell, conchiglie, orecchiette, pasta shape, ditalini, bow tie pasta, short pasta, small pasta, soup pasta, ziti, cavatappi, penne pasta, fusilli pasta, rotini, orzo, orzo pasta, lasagne sheet, lasagna noodle, lasagne, lasagna sheet, cannelloni, pasta dry, Nudeln, Pasta, Penne, Fusilli, Makkaroni, Hörnchennudeln, Spiralnudeln, Lasagneplatten, Suppennudeln, Hartweizennudeln
20420 spaghetti, linguine, tagliatelle, fettuccine, vermicelli, spaghettini, dry spaghetti, bucatini, pappardelle, capellini, angel hair pasta, Spaghetti, Bandnudeln, Tagliatelle
20400 cooked pasta, pasta cooked, cooked macaroni, boiled pasta, cooked penne, cooked elbow macaroni, gekochte Nudeln, Nudeln gekocht
20421 cooked spaghetti
20093 fresh pasta, frische Pasta, frische Nudeln
20107 wholewheat pasta, whole wheat pasta, wholemeal pasta, wholegrain pasta, pasta wholewheat dry, whole wheat penne, Vollkornnudeln
20108 cooked whole wheat pasta, pasta wholewheat cooked
20124 whole wheat spaghetti, wholewheat spaghetti, Vollkornspaghetti
20109 egg noodle, egg noodles dry, wide egg noodle, medium egg noodle, dried egg noodle, Eiernudeln, Spätzle getrocknet, Mie Nudeln
20110 cooked egg noodle, egg noodles cooked
20114 soba, soba noodle, buckwheat noodle
20116 somen, somen noodle
20028 couscous, couscous dry, instant couscous, Couscous, Cous Cous
20029 cooked couscous, couscous cooked
20012 bulgur, bulgur wheat, bulgar wheat, cracked wheat, Bulgur
20013 cooked bulgur, bulgur cooked
20005 pearl barley, barley, pearled barley, barley pearled dry, Perlgraupen, Graupen, Gerste, Gerstengraupen
20006 cooked barley, barley pearled cooked, cooked pearl barley
08120 oat, rolled oat, porridge oat, oats rolled, quick oat, old fashioned oat, old fashioned rolled oat, oatmeal, jumbo oat, oat flake, quick cooking oat, quick rolled oat, Haferflocken, zarte Haferflocken, kernige Haferflocken, Hafer
08122 instant oat, instant oatmeal, Schmelzflocken, Instant Haferflocken
08121 cooked oatmeal, porridge, oat porridge cooked in water, Porridge, Haferbrei
20038 oat groat, whole oat, steel cut oat, pinhead oat
20132 oat flour, Hafermehl
20033 oat bran, Haferkleie
08037 granola, homemade granola
18079 breadcrumb, dry breadcrumb, breadcrumbs dry, dried breadcrumb, bread crumb, plain breadcrumb, panko, panko breadcrumb, Semmelbrösel, Paniermehl
18376 seasoned breadcrumb, italian breadcrumb, italian seasoned breadcrumb
18069 bread, white bread, bread white, sandwich bread, toast, slice bread, fresh breadcrumb, white breadcrumb, fresh white breadcrumb, bread slice, Weissbrot, Toastbrot, Brot, Toast
18075 wholemeal bread, whole wheat bread, wholewheat bread, bread wholemeal, brown bread, Vollkornbrot
18029 french bread, baguette, sourdough, sourdough bread, ciabatta, crusty bread, Baguette
18060 rye bread, Roggenbrot
18044 pumpernickel, Pumpernickel
18041 pita, pita bread, pitta, pitta bread, Pitabrot, Fladenbrot
18973 focaccia
18350 burger bun, hamburger bun, hot dog roll, bun
18342 bread roll, roll, dinner roll, Brötchen, Semmel, Semmeln
18242 crouton
18364 tortilla, flour tortilla, wrap, tortilla wrap, wheat tortilla, Weizentortilla, Wraps
18363 corn tortilla, Maistortilla
18360 taco shell
18216 crispbread, rye crispbread, crispbread rye, Knäckebrot
18228 saltine, saltine cracker, cream cracker, soda cracker
18229 cracker
18235 whole wheat cracker
18217 matzo, Matze
18173 graham cracker, digestive biscuit, graham cracker crumb
18172 gingersnap, ginger nut
18175 ladyfinger, sponge finger, Löffelbiskuits
18337 puff pastry, puff pastry sheet, Blätterteig
18338 filo, phyllo, filo pastry, phyllo dough, Filoteig
18402 shortcrust pastry, pie crust, pie dough, Mürbeteig
18369 baking powder, Backpulver
18372 baking soda, bicarbonate of soda, bicarbonate soda, bicarb, Natron
18373 cream of tartar
18375 dry yeast, dried yeast, yeast dried, active dry yeast, instant yeast, fast action yeast, easy bake yeast, dried active yeast, yeast, Trockenhefe
18374 fresh yeast, Hefe, frische Hefe, Hefewürfel
42281 guar gum, locust bean gum, xanthan gum, Guarkernmehl, Johannisbrotkernmehl

# Legumes
16069 lentil, brown lentil, green lentil, dried lentil, lentils dry, puy lentil, beluga lentil, french lentil, black lentil, dried green lentil, dried brown lentil, Linsen, braune Linsen, grüne Linsen, Tellerlinsen, Berglinsen, Belugalinsen
16144 red lentil, split red lentil, red split lentil, lentils red dry, masoor dal, pink lentil, dried red lentil, red lentils dry, rote Linsen
16070 cooked lentil, lentils cooked, canned lentil, tinned lentil, lentil tin, cooked puy lentil, ready cooked lentil, gekochte Linsen, Linsen aus der Dose, tinned green lentil, tinned brown lentil, tinned puy lentil, tinned drained lentil, tinned red lentil
16085 split pea, yellow split pea, green split pea, dried split pea, split peas dry, chana dal, dal, Schälerbsen, Spalterbsen, gelbe Erbsen
16086 cooked split pea, split peas cooked
16056 dried chickpea, chickpeas dry, dried garbanzo, dry chickpea, dried garbanzo bean, getrocknete Kichererbsen, Kichererbsen getrocknet
16057 cooked chickpea, chickpeas cooked, boiled chickpea, cooked garbanzo bean, gekochte Kichererbsen
16358 chickpea, tinned chickpea, canned chickpea, chickpeas tinned drained, garbanzo bean, garbanzo, canned garbanzo bean, chickpea tin, can chickpea, tin chickpea, can garbanzo bean, drained chickpea, Kichererbsen, Kichererbsen aus der Dose, Dose Kichererbsen
16157 chickpea flour, gram flour, besan, Kichererbsenmehl
16032 dried kidney bean, kidney beans dry, dry kidney bean, dried red kidney bean, getrocknete Kidneybohnen
16033 cooked kidney bean, kidney beans cooked
16145 kidney bean, tinned kidney bean, canned kidney bean, kidney beans tinned drained, red kidney bean, can kidney bean, tin kidney bean, canned red kidney bean, tinned red kidney bean, can red kidney bean, tin red kidney bean, Kidneybohnen, Kidneybohnen aus der Dose, Dose Kidneybohnen, rote Bohnen
16025 tinned drained great northern bean, cooked great northern bean
16072 tinned drained butter bean, tinned drained lima bean, cooked butter bean
16020 tinned drained borlotti bean, tinned drained cranberry bean
16038 tinned drained navy bean, tinned drained haricot bean, cooked navy bean
16014 dried black bean, black beans dry, dry black bean, getrocknete schwarze Bohnen
16015 cooked black bean, black beans cooked, tinned drained black bean, drained tinned black turtle bean
16018 black bean, tinned black bean, canned black bean, can black bean, tin black bean, black turtle bean, schwarze Bohnen, Dose schwarze Bohnen
16049 dried white bean, white beans dry, dry white bean, dried cannellini bean, getrocknete weisse Bohnen
16050 cooked white bean, white beans cooked, cooked cannellini bean, tinned drained white bean, tinned drained cannellini bean, cannellini bean drained
16051 white bean, tinned white bean, canned white bean, cannellini, cannellini bean, canned cannellini bean, tinned cannellini bean, can cannellini bean, can white bean, weisse Bohnen, Dose weisse Bohnen, Cannellini Bohnen
16037 dried navy bean, dried haricot bean, haricot bean, navy bean
16039 canned navy bean, tinned haricot bean
16024 dried great northern bean, great northern bean dry
16026 great northern bean, canned great northern bean
16042 dried pinto bean, dry pinto bean
16043 cooked pinto bean
16146 pinto bean, canned pinto bean, tinned pinto bean, can pinto bean
16071 dried butter bean, dried lima bean
16073 butter bean, tinned butter bean, canned lima bean, canned butter bean, lima bean, tin butter bean, Limabohnen
16019 dried borlotti bean, dried cranberry bean
16021 borlotti bean, tinned borlotti bean, cranberry bean, Borlottibohnen
16062 black eyed pea, black eyed bean, dried black eyed pea, black eye bean, Augenbohnen
16080 mung bean, dried mung bean, Mungbohnen
16001 adzuki bean, aduki bean, Adzukibohnen
16006 baked bean, baked beans in tomato sauce, baked beans in tomato sauce tinned, tinned baked bean, canned baked bean, weisse Bohnen in Tomatensauce, Baked Beans
16403 refried bean, canned refried bean
16108 soybean, dried soybean, soya beans dry, soya bean, Sojabohnen
16117 defatted soy flour
16115 soy flour, soya flour, Sojamehl
16122 soy protein isolate, soya protein, Sojaprotein
16120 soy milk, soya milk, soymilk, soya drink, Sojamilch, Sojadrink
16426 tofu, firm tofu, tofu firm, extra firm tofu, smoked tofu, Tofu, Räuchertofu
16127 soft tofu, silken tofu, tofu soft, Seidentofu
16114 tempeh, Tempeh
16112 miso, miso paste, white miso, red miso, Miso, Misopaste
16123 soy sauce, soya sauce, light soy sauce, dark soy sauce, shoyu, Sojasauce, Sojasosse
16424 low sodium soy sauce, reduced sodium soy sauce, reduced salt soy sauce
16124 tamari, Tamari
16137 hummus homemade
16158 hummus, houmous, Hummus
16087 peanut, raw peanut, unsalted peanut, peanuts raw, groundnut, Erdnüsse, Erdnusskerne
16090 salted peanut, roasted peanut, dry roasted peanut, gesalzene Erdnüsse, geröstete Erdnüsse
16098 peanut butter, smooth peanut butter, creamy peanut butter, Erdnussbutter, Erdnussmus
16097 crunchy peanut butter, chunky peanut butter
16099 peanut flour, powdered peanut butter, peanut butter powder
16076 lupin bean, lupin beans dry, lupini bean, Lupinen
16077 lupin beans cooked
16055 carob powder, carob flour

# Nuts and seeds
12061 almond, whole almond, flaked almond, sliced almond, slivered almond, chopped almond, Mandeln, gehobelte Mandeln, Mandelblättchen, Mandelstifte
12062 blanched almond, ground almond, almond meal, almond flour, gemahlene Mandeln, blanchierte Mandeln
12195 almond butter, Mandelmus
14016 almond milk, almond drink, Mandelmilch, Mandeldrink
12071 marzipan, almond paste, Marzipan
12078 brazil nut, Paranüsse
12087 cashew, cashew nut, raw cashew, Cashewkerne, Cashews, Cashewnüsse
12088 cashew butter, Cashewmus
12120 hazelnut, filbert, chopped hazelnut, ground hazelnut, Haselnüsse, gemahlene Haselnüsse
12131 macadamia, macadamia nut, Macadamianüsse
12142 pecan, pecan nut, pecan half, Pekannüsse
12147 pine nut, pine kernel, Pinienkerne
12151 pistachio, pistachio nut, shelled pistachio, Pistazien
12155 walnut, walnut half, walnut piece, chopped walnut, Walnüsse, Walnusskerne, Baumnüsse
12635 mixed nut, Nussmischung
12098 chestnut, sweet chestnut, Maronen, Esskastanien
12006 chia seed, chia, Chiasamen
12220 linseed, flaxseed, flax seed, ground flaxseed, Leinsamen
12014 pumpkin seed, pepita, Kürbiskerne
12036 sunflower seed, sunflower kernel, Sonnenblumenkerne
12023 sesame seed, sesame, toasted sesame seed, white sesame seed, black sesame seed, Sesam, Sesamsamen, Sesamsaat
12166 tahini, sesame paste, Tahin, Tahini, Sesammus
12108 desiccated coconut, coconut desiccated, unsweetened shredded coconut, shredded unsweetened coconut, dried coconut, coconut flake, unsweetened coconut flake, unsweetened coconut, Kokosraspel, Kokosflocken
12179 sweetened shredded coconut, shredded coconut, sweetened coconut, sweetened flaked coconut
12104 fresh coconut, coconut, Kokosnuss
12118 coconut milk, tinned coconut milk, canned coconut milk, coconut milk tinned, full fat coconut milk, can coconut milk, tin coconut milk, Kokosmilch, Dose Kokosmilch
12115 coconut cream, Kokoscreme
12177 creamed coconut
12119 coconut water, Kokoswasser

# Spices
02001 allspice, ground allspice, Piment
02002 aniseed, anise seed, anise, star anise, Anis, Sternanis
02003 dried basil, basil dried, getrocknetes Basilikum
02044 basil, fresh basil, basil leaf, basil fresh, thai basil, Basilikum, frisches Basilikum, Basilikumblätter
02004 bay leaf, bay, dried bay leaf, Lorbeerblatt, Lorbeerblätter, Lorbeer
02005 caraway, caraway seed, Kümmel
02006 cardamom, ground cardamom, cardamom pod, Kardamom
02007 celery seed, Selleriesamen
02008 dried chervil, chervil, Kerbel
02009 chilli powder, chili powder, mild chilli powder, hot chilli powder, Chilipulver
02010 cinnamon, ground cinnamon, cinnamon stick, stick cinnamon, Zimt, Zimtstange, gemahlener Zimt
02011 ground clove, whole clove, cloves ground, Nelken, Gewürznelken, clove
02012 dried coriander leaf, dried cilantro
02013 coriander seed, ground coriander, coriander powder, coriander ground, gemahlener Koriander, Koriandersamen, Koriander gemahlen
02014 cumin, cumin seed, ground cumin, cumin powder, Kreuzkümmel, gemahlener Kreuzkümmel, Cumin
02015 curry powder, mild curry powder, medium curry powder, madras curry powder, curry, Currypulver, Curry
02016 dill seed
02017 dried dill, dill weed, dried dill weed, getrockneter Dill
02045 dill, fresh dill, Dill, frischer Dill
02018 fennel seed, Fenchelsamen
02019 fenugreek, fenugreek seed, Bockshornklee
02020 garlic powder, garlic granule, granulated garlic, dried garlic, Knoblauchpulver, Knoblauchgranulat
02021 ground ginger, ginger powder, ginger ground, dried ginger, Ingwerpulver, gemahlener Ingwer
02022 mace, Macis, Muskatblüte
02023 marjoram, dried marjoram, Majoran
02024 mustard seed, yellow mustard seed, black mustard seed, mustard powder, ground mustard, dry mustard, english mustard powder, Senfkörner, Senfpulver
02025 nutmeg, ground nutmeg, grated nutmeg, Muskat, Muskatnuss
02026 onion powder, onion granule, Zwiebelpulver
02027 oregano, dried oregano, oregano dried, mexican oregano, Oregano
02028 paprika, sweet paprika, smoked paprika, paprika powder, hot paprika, smoked sweet paprika, Paprikapulver, Paprikapulver edelsüss, Paprika edelsüss, Paprika rosenscharf, geräuchertes Paprikapulver, edelsüsses Paprikapulver
02029 dried parsley, parsley dried, getrocknete Petersilie
02030 black pepper, pepper, ground black pepper, black pepper ground, cracked black pepper, peppercorn, black peppercorn, ground pepper, Pfeffer, schwarzer Pfeffer, Pfefferkörner
02031 cayenne, cayenne pepper, red pepper flake, chilli flake, chili flake, crushed red pepper, crushed red pepper flake, dried chilli flake, dried chili flake, red chili flake, red chilli flake, hot red pepper flake, Cayennepfeffer, Chiliflocken
02032 white pepper, ground white pepper, weisser Pfeffer
02033 poppy seed, Mohn
02034 poultry seasoning
02035 pumpkin pie spice, mixed spice, pumpkin spice, Lebkuchengewürz
02036 dried rosemary, getrockneter Rosmarin
02063 rosemary, fresh rosemary, rosemary sprig, Rosmarin, Rosmarinzweig, frischer Rosmarin
02037 saffron, saffron thread, saffron strand, Safran
02038 dried sage, ground sage, sage, fresh sage, sage leaf, Salbei
02039 savory, dried savory, Bohnenkraut
02041 tarragon, dried tarragon, fresh tarragon, Estragon
02042 dried thyme, thyme dried, ground thyme, getrockneter Thymian
02049 thyme, fresh thyme, thyme sprig, thyme leaf, Thymian, frischer Thymian, Thymianzweig
02043 turmeric, ground turmeric, turmeric powder, Kurkuma
02046 mustard, prepared mustard, mustard prepared, dijon mustard, english mustard, wholegrain mustard, yellow mustard, whole grain mustard, dijon, american mustard, Senf, mittelscharfer Senf, Dijonsenf
02047 salt, sea salt, table salt, kosher salt, rock salt, fine salt, flaky salt, fine sea salt, coarse salt, iodised salt, Salz, Meersalz, Kochsalz, Jodsalz
02048 cider vinegar, apple cider vinegar, Apfelessig
02053 vinegar, white vinegar, distilled vinegar, malt vinegar, rice vinegar, rice wine vinegar, distilled white vinegar, Essig, Branntweinessig, Reisessig
02068 wine vinegar, red wine vinegar, white wine vinegar, sherry vinegar, Rotweinessig, Weissweinessig, Weinessig
02069 balsamic vinegar, balsamic, Balsamico, Balsamessig, Aceto Balsamico
02050 vanilla extract, vanilla, vanilla essence, pure vanilla extract, vanilla bean paste, Vanilleextrakt
02054 caper, Kapern
02055 horseradish, prepared horseradish, horseradish sauce, Meerrettich
02064 mint, fresh mint, peppermint, mint leaf, Minze, frische Minze, Pfefferminze
02066 dried mint
02075 taco seasoning, taco seasoning mix, fajita seasoning
02076 chili seasoning, chili seasoning mix

# Fats
04053 olive oil, extra virgin olive oil, light olive oil, virgin olive oil, evoo, Olivenöl, natives Olivenöl
04582 rapeseed oil, canola oil, canola, Rapsöl
04044 soybean oil, vegetable oil, cooking oil, oil, neutral oil, frying oil, salad oil, Öl, Pflanzenöl, Speiseöl, Bratöl, cooking spray, oil spray, non stick cooking spray, nonstick cooking spray
04584 sunflower oil, high oleic sunflower oil, Sonnenblumenöl
42289 corn oil, Maiskeimöl
04042 peanut oil, groundnut oil, Erdnussöl
04058 sesame oil, toasted sesame oil, Sesamöl
04047 coconut oil, Kokosöl, Kokosfett
04055 palm oil, Palmöl
04517 grapeseed oil, Traubenkernöl
04528 walnut oil, Walnussöl
04532 hazelnut oil
04581 avocado oil
42231 linseed oil, flaxseed oil, flax oil, Leinöl
04510 safflower oil, Distelöl
04002 lard, Schmalz, Schweineschmalz
04542 chicken fat
04574 duck fat, Entenschmalz
04576 goose fat, Gänseschmalz
04001 beef dripping, dripping, tallow, beef tallow
04609 bacon grease, bacon fat
13335 suet, Rindertalg
04615 shortening, vegetable shortening, Pflanzenfett
04610 margarine, Margarine
04025 mayonnaise, mayo, Mayonnaise, Majo
04114 italian dressing

# Dairy and eggs
01145 unsalted butter, Süssrahmbutter, butter unsalted
01001 butter, salted butter, Butter
01003 clarified butter, ghee, butter oil, Butterschmalz, Ghee
01211 milk, whole milk, full fat milk, milk whole, full cream milk, Milch, Vollmilch
01174 semi skimmed milk, 2 milk, reduced fat milk, milk semi skimmed, low fat milk 2, fettarme Milch
01175 low fat milk, 1 milk
01151 skimmed milk, skim milk, nonfat milk, milk skimmed, fat free milk, Magermilch
01212 milk powder, whole milk powder, milk powder whole, dried milk, dried whole milk, full cream milk powder, powdered milk, dry milk, Milchpulver, Vollmilchpulver
01091 skimmed milk powder, milk powder skimmed, nonfat dry milk, skim milk powder, dried skimmed milk, nonfat milk powder, nonfat dry milk powder, dry milk powder, instant nonfat dry milk, Magermilchpulver
01088 buttermilk, Buttermilch
01094 buttermilk powder, dried buttermilk
01214 evaporated milk, milk evaporated, Kondensmilch
01095 condensed milk, sweetened condensed milk, milk condensed sweetened, gezuckerte Kondensmilch
01106 goat milk, Ziegenmilch
01049 half and half
01050 single cream, light cream, table cream, pouring cream, coffee cream, Kochsahne, Kaffeesahne
01052 light whipping cream
01053 double cream, heavy cream, whipping cream, cream, cream whipping, heavy whipping cream, thickened cream, Sahne, Schlagsahne, Schlagrahm, Rahm, süsse Sahne, Schlagobers
01056 sour cream, soured cream, Sauerrahm, saure Sahne, Schmand
01116 yoghurt, yogurt, plain yoghurt, natural yoghurt, yoghurt plain, plain yogurt, natural yogurt, whole milk yogurt, plain whole milk yogurt, Joghurt, Naturjoghurt, Jogurt
01117 low fat yogurt, low fat yoghurt, plain low fat yogurt
01118 nonfat yogurt, fat free yogurt, fat free natural yoghurt
01256 greek yogurt nonfat, fat free greek yogurt, nonfat greek yogurt, skyr, Skyr
01017 cream cheese, soft cheese, full fat soft cheese, Frischkäse
01012 cottage cheese, Hüttenkäse, körniger Frischkäse
01036 ricotta, ricotta cheese, whole milk ricotta, Ricotta
01037 part skim ricotta, part skim ricotta cheese
01009 cheddar, cheddar cheese, mature cheddar, sharp cheddar, sharp cheddar cheese, cheese, grated cheese, shredded cheese, shredded cheddar, grated cheddar, extra mature cheddar, shredded cheddar cheese, Cheddar, Käse, geriebener Käse, Reibekäse
01033 parmesan, parmesan cheese, parmigiano, parmigiano reggiano, block parmesan, Parmesan
01032 grated parmesan, parmesan grated, grated parmesan cheese, geriebener Parmesan, Parmesan gerieben
01146 shredded parmesan, shredded parmesan cheese
01038 pecorino, romano, pecorino romano, romano cheese, Pecorino
01026 mozzarella, mozzarella cheese, fresh mozzarella, mozzarella ball, buffalo mozzarella, Mozzarella
01029 shredded mozzarella, grated mozzarella, low moisture mozzarella, part skim mozzarella, mozzarella shredded, geriebener Mozzarella, shredded mozzarella cheese
01019 feta, feta cheese, crumbled feta, Feta, Schafskäse, Fetakäse
01159 goat cheese, soft goat cheese, goats cheese, chevre, Ziegenkäse, Ziegenfrischkäse
01023 gruyere, gruyere cheese, Greyerzer, Bergkäse, Gruyère
01040 swiss cheese, emmental, emmental cheese, emmentaler, Emmentaler
01022 gouda, gouda cheese, Gouda
01018 edam, edam cheese, Edamer
01025 monterey jack, monterey jack cheese, pepper jack, jack cheese
01251 mexican blend cheese, mexican cheese blend, shredded mexican cheese
01004 blue cheese, stilton, gorgonzola, danish blue, Blauschimmelkäse, Gorgonzola
01006 brie, Brie
01007 camembert, Camembert
01035 provolone, provolone cheese
01228 queso fresco
01123 egg, whole egg, large egg, free range egg, medium egg, beaten egg, egg raw, hen egg, Ei, Eier
01124 egg white, egg white raw, Eiweiss, Eiklar
01125 egg yolk, egg yolk raw, Eigelb, Eidotter
01129 hard boiled egg, boiled egg, egg hard boiled, hart gekochte Eier, gekochtes Ei
01133 egg powder, dried egg, powdered egg, whole egg powder, Eipulver, Volleipulver
01173 egg white powder, dried egg white, Eiweisspulver
01115 whey powder, sweet whey powder, Molkenpulver

# Meat
23567 minced beef, beef mince, ground beef, mince, lean minced beef, beef mince 15 fat, lean ground beef, lean beef mince, minced beef 15 fat, ground beef 85 lean, ground beef 85 15, hamburger meat, Rinderhackfleisch, Rinderhack, Hackfleisch vom Rind, Rindshackfleisch, Hackfleisch Rind
23557 extra lean minced beef, beef mince 5 fat, minced beef 5 fat, extra lean ground beef, 5 fat beef mince, ground beef 95 lean, 95 lean ground beef, Tatar, mageres Rinderhackfleisch
23562 minced beef 10 fat, beef mince 10 fat, ground beef 90 lean, 90 lean ground beef
23572 minced beef 20 fat, beef mince 20 fat, ground beef 80 lean, 80 lean ground beef, ground chuck, ground beef 80 20
23570 browned minced beef, beef mince browned, cooked ground beef, cooked minced beef, browned ground beef
23093 stewing beef, beef stew meat, stewing steak, braising steak, beef for stew, diced beef, beef lean for stewing, beef chuck, chuck steak, beef chuck stew meat, casserole steak, beef, braising beef, stew meat, beef stewing, chuck roast, Rindfleisch, Rindergulasch, Gulaschfleisch, Gulasch, Rinderschmorfleisch, Suppenfleisch
13929 sirloin steak, rump steak, sirloin, beef steak, steak, Rumpsteak, Steak
13970 flank steak, skirt steak
13917 fillet steak, beef tenderloin, beef fillet, Rinderfilet
13803 brisket, beef brisket
13891 topside, top round, beef round, round steak, silverside, Rinderbraten
13850 ribeye steak, rib eye steak, ribeye
13350 dried beef, chipped beef, beef cured and dried, Trockenfleisch, Bündnerfleisch
13348 corned beef, tinned corned beef, canned corned beef
13325 beef liver, Rinderleber
10219 minced pork, pork mince, ground pork, pork minced, Schweinehackfleisch, Schweinehack, Schweinemett, Mett
10024 pork loin lean, lean pork loin, pork loin
10060 pork tenderloin, pork fillet, Schweinefilet, Schweinelende
10070 pork shoulder, pork butt, diced pork, pork stew meat, pork, Schweinefleisch, Schweineschulter, Schweinegulasch
10062 pork chop, pork loin chop, pork steak, Schweinekotelett, Schweineschnitzel
10005 pork belly, belly pork, Schweinebauch
10088 spare rib, pork rib
10123 bacon, streaky bacon, bacon rasher, smoked bacon, back bacon, bacon slice, pancetta, bacon lardon, smoked streaky bacon, bacon raw, unsmoked bacon, lardon, Speck, Bauchspeck, Speckwürfel, Frühstücksspeck, Schinkenspeck
10860 cooked bacon
07029 ham, cooked ham, sliced ham, ham cooked sliced, deli ham, Schinken, Kochschinken, gekochter Schinken
10182 ham steak, diced ham, cubed ham
07071 salami, dry salami, salami dry, Salami
07057 pepperoni, pepperoni slice
07019 chorizo, chorizo sausage, spanish chorizo, Chorizo
07036 italian sausage, hot italian sausage, sweet italian sausage
07063 sausage, pork sausage, breakfast sausage, sausage meat, bulk sausage, Bratwurst roh
07013 bratwurst, Bratwurst
07970 kielbasa, polish sausage, smoked sausage, andouille, andouille sausage
07022 frankfurter, hot dog, hot dog sausage, wiener, Wiener Würstchen, Frankfurter, Würstchen
07964 bockwurst
07075 cabanossi, smoked link sausage, Cabanossi, Mettenden
07008 bologna, Fleischwurst, Lyoner
07050 mortadella
07041 liver sausage, liverwurst, Leberwurst
07005 black pudding, blood sausage, Blutwurst
17224 minced lamb, lamb mince, ground lamb, Lammhackfleisch, Lammhack
17059 lamb, diced lamb, lamb stew meat, lamb leg lean, stewing lamb, lamb leg lean raw, cubed lamb, Lammfleisch, Lammgulasch, Lamm
17142 minced veal, ground veal, veal mince
17140 veal, stewing veal, veal stew meat, Kalbfleisch
17164 venison, venison raw, deer meat, Hirsch, Reh, Wild, Hirschfleisch, Hirschgulasch
17343 minced venison, ground venison
17177 rabbit, Kaninchen
17330 ground bison, bison
05062 chicken breast, skinless chicken breast, chicken breast skinless, boneless skinless chicken breast, chicken breast fillet, chicken, chicken fillet, diced chicken, chicken breast meat, chicken tenderloin, Hähnchenbrust, Hähnchenbrustfilet, Hühnerbrust, Hähnchen, Hühnerfleisch, Hähnchenfleisch, Poulet, Pouletbrust, Hähnchenfilet
05064 cooked chicken breast, chicken breast roasted, roast chicken breast, cooked chicken, shredded chicken, cooked shredded chicken, chicken cooked, rotisserie chicken, leftover chicken, gekochtes Hähnchenfleisch
05096 chicken thigh, skinless chicken thigh, chicken thigh skinless, boneless chicken thigh, boneless skinless chicken thigh, chicken thigh fillet, Hähnchenschenkel ohne Haut, Hähnchenoberkeule
05091 chicken thigh with skin, chicken thigh bone in
05066 chicken drumstick, Hähnchenschenkel, Hähnchenunterschenkel, Hähnchenkeule
05006 whole chicken, Suppenhuhn
05332 minced chicken, chicken mince, ground chicken, Hähnchenhackfleisch
05311 tinned chicken, canned chicken, chicken tinned
05027 chicken liver, Hühnerleber
05305 minced turkey, turkey mince, ground turkey, Putenhackfleisch, Putenhack
05219 turkey breast, turkey breast skinless, turkey, turkey fillet, turkey steak, diced turkey, Putenbrust, Pute, Putenfleisch, Putenschnitzel
05220 cooked turkey breast, cooked turkey, roast turkey
05141 duck skinless, duck meat
05139 duck, Ente
05316 duck breast, Entenbrust

# Fish
15268 cod, cod fillet, cod loin, white fish, white fish fillet, cod raw, Kabeljau, Dorsch, Fischfilet, Weissfisch, Kabeljaufilet
15018 salt cod, dried cod, cod dried and salted, Stockfisch, Klippfisch
15033 haddock, Schellfisch
15035 smoked haddock
15266 pollock, alaska pollock, coley, Seelachs, Seelachsfilet, Alaska Seelachs
15028 flounder, sole, plaice, Scholle
15036 halibut, Heilbutt
15261 tilapia
15039 herring, Hering, herring raw
15041 pickled herring, Matjes, Rollmops
15046 mackerel, Makrele, mackerel raw
15236 salmon, salmon fillet, fresh salmon, salmon raw, Lachs, Lachsfilet
15077 smoked salmon, Räucherlachs
15260 tinned salmon, canned salmon, salmon tinned drained, can salmon, Dosenlachs
15240 trout, rainbow trout, Forelle, trout raw
15127 tuna steak, fresh tuna
15121 tuna, tinned tuna, canned tuna, tuna in water, tuna tinned in water drained, tuna in brine, tuna in spring water, can tuna, tin tuna, canned tuna in water, Thunfisch, Thunfisch im eigenen Saft, Dose Thunfisch
15119 tuna in oil, tuna tinned in oil drained, canned tuna in oil, tinned tuna in oil, Thunfisch in Öl
15088 sardine, tinned sardine, canned sardine, sardines tinned in oil drained, sardine in oil, Sardinen, Ölsardinen
15002 anchovy, anchovy fillet, anchovies tinned in oil drained, anchovy in oil, Sardellen, Sardellenfilets, Anchovis
15270 prawn, raw prawn, shrimp, king prawn, tiger prawn, raw shrimp, peeled shrimp, frozen prawn, jumbo shrimp, large shrimp, Garnelen, Riesengarnelen, Shrimps, Krabben
15271 cooked prawn, prawns cooked, cooked shrimp, gekochte Garnelen
15152 canned shrimp, tinned shrimp
15141 canned crab, tinned crab, crab meat, crab tinned drained, crabmeat, Krabbenfleisch
15164 mussel, mussels raw, Miesmuscheln, Muscheln
15175 squid, calamari, squid raw, Tintenfisch, Calamari
15160 tinned clam, canned clam, clams tinned drained
15157 clam
15172 scallop, Jakobsmuscheln
15166 octopus

# Sweet
19335 sugar, white sugar, granulated sugar, caster sugar, sugar white, superfine sugar, Zucker, weisser Zucker, Kristallzucker, Vanillezucker, vanilla sugar, Päckchen Vanillezucker
19334 brown sugar, sugar brown, light brown sugar, dark brown sugar, muscovado, light muscovado sugar, dark muscovado sugar, soft brown sugar, soft light brown sugar, packed brown sugar, palm sugar, brauner Zucker, Rohrzucker
19908 demerara sugar, turbinado sugar, raw sugar, cane sugar, coconut sugar
19336 icing sugar, powdered sugar, confectioners sugar, Puderzucker
19296 honey, clear honey, runny honey, Honig
19353 maple syrup, pure maple syrup, Ahornsirup
19304 molasses, treacle, black treacle, Melasse, Zuckerrübensirup
19350 corn syrup, light corn syrup, glucose syrup, Glukosesirup
19349 dark corn syrup
19912 agave, agave syrup, agave nectar, Agavendicksaft, Agavensirup
19352 malt syrup, malt extract, barley malt syrup
19297 jam, preserves, strawberry jam, raspberry jam, fruit jam, Marmelade, Konfitüre, Erdbeermarmelade
19719 apricot jam, Aprikosenmarmelade, Aprikosenkonfitüre
19303 marmalade, orange marmalade, Orangenmarmelade
19165 cocoa powder, cocoa, unsweetened cocoa powder, unsweetened cocoa, baking cocoa, cacao powder, Kakao, Kakaopulver, Backkakao
19904 dark chocolate, chocolate dark, bittersweet chocolate, plain chocolate, 70 dark chocolate, dark chocolate 70, Zartbitterschokolade, dunkle Schokolade, Edelbitterschokolade
19080 semisweet chocolate, chocolate chip, semisweet chocolate chip, chocolate chunk, semi sweet chocolate chip, chocolate, dark chocolate chip, Schokolade, Schokotropfen, Schokoladenstückchen
19120 milk chocolate, chocolate milk bar, milk chocolate chip, Vollmilchschokolade
19087 white chocolate, white chocolate chip, weisse Schokolade
19078 unsweetened chocolate, baking chocolate
19177 gelatine, gelatin, powdered gelatine, unflavored gelatin, gelatine powder, Gelatine
19116 marshmallow, mini marshmallow
19095 vanilla ice cream, ice cream, Vanilleeis
19125 chocolate hazelnut spread, hazelnut spread, Nussnougatcreme
19294 apple butter
42063 liquid pectin
19310 pectin
19117 halva
`;
