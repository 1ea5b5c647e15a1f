/*
 * What 100 g of the edible part of a food hold, and what household measures of it weigh.
 *
 * Source: U.S. Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory: USDA National Nutrient Database for
 * Standard Reference, Release 26, 2013 (files ABBREV, FOOD_DES and WEIGHT); public domain. Rows and figures are as published; left out are
 * foods that a kitchen does not start from (ready meals, snacks, sweet bakes, made-up drinks, grades and trims of one cut) and
 * measures that name a maker or are plain units of weight.
 */

/** CSV: number, description, food group; g of water, kcal, g of protein, fat, carbohydrate by difference, fibre, sugars, ash; mg of sodium and potassium. An empty cell is not stated. */
export const SR26_FOODS_CSV = String.raw`01001,"Butter, salted",Dairy and Egg Products,15.87,717,0.85,81.11,0.06,0.0,0.06,2.11,643,24
01002,"Butter, whipped, with salt",Dairy and Egg Products,15.87,717,0.85,81.11,0.06,0.0,0.06,2.11,659,26
01003,"Butter oil, anhydrous",Dairy and Egg Products,0.24,876,0.28,99.48,0.00,0.0,0.00,0.00,2,5
01004,"Cheese, blue",Dairy and Egg Products,42.41,353,21.40,28.74,2.34,0.0,0.50,5.11,1146,256
01005,"Cheese, brick",Dairy and Egg Products,41.11,371,23.24,29.68,2.79,0.0,0.51,3.18,560,136
01006,"Cheese, brie",Dairy and Egg Products,48.42,334,20.75,27.68,0.45,0.0,0.45,2.70,629,152
01007,"Cheese, camembert",Dairy and Egg Products,51.80,300,19.80,24.26,0.46,0.0,0.46,3.68,842,187
01008,"Cheese, caraway",Dairy and Egg Products,39.28,376,25.18,29.20,3.06,0.0,,3.28,690,93
01009,"Cheese, cheddar",Dairy and Egg Products,36.75,403,24.90,33.14,1.28,0.0,0.52,3.93,621,98
01010,"Cheese, cheshire",Dairy and Egg Products,37.65,387,23.37,30.60,4.78,0.0,,3.60,700,95
01011,"Cheese, colby",Dairy and Egg Products,38.20,394,23.76,32.11,2.57,0.0,0.52,3.36,604,127
01012,"Cheese, cottage, creamed, large or small curd",Dairy and Egg Products,79.79,98,11.12,4.30,3.38,0.0,2.67,1.41,364,104
01013,"Cheese, cottage, creamed, with fruit",Dairy and Egg Products,79.64,97,10.69,3.85,4.61,0.2,2.38,1.20,344,90
01014,"Cheese, cottage, nonfat, uncreamed, dry, large or small curd",Dairy and Egg Products,81.01,72,10.34,0.29,6.66,0.0,1.85,1.71,372,137
01015,"Cheese, cottage, lowfat, 2% milkfat",Dairy and Egg Products,80.69,86,11.83,2.45,3.66,0.0,3.67,1.36,330,84
01016,"Cheese, cottage, lowfat, 1% milkfat",Dairy and Egg Products,82.48,72,12.39,1.02,2.72,0.0,2.72,1.39,406,86
01017,"Cheese, cream",Dairy and Egg Products,54.44,342,5.93,34.24,4.07,0.0,3.21,1.32,365,138
01018,"Cheese, edam",Dairy and Egg Products,41.56,357,24.99,27.80,1.43,0.0,1.43,4.22,812,188
01019,"Cheese, feta",Dairy and Egg Products,55.22,264,14.21,21.28,4.09,0.0,4.09,5.20,917,62
01020,"Cheese, fontina",Dairy and Egg Products,37.92,389,25.60,31.14,1.55,0.0,1.55,3.79,800,64
01021,"Cheese, gjetost",Dairy and Egg Products,13.44,466,9.65,29.51,42.65,0.0,,4.75,600,1409
01022,"Cheese, gouda",Dairy and Egg Products,41.46,356,24.94,27.44,2.22,0.0,2.22,3.94,819,121
01023,"Cheese, gruyere",Dairy and Egg Products,33.19,413,29.81,32.34,0.36,0.0,0.36,4.30,714,81
01024,"Cheese, limburger",Dairy and Egg Products,48.42,327,20.05,27.25,0.49,0.0,0.49,3.79,800,128
01025,"Cheese, monterey",Dairy and Egg Products,41.01,373,24.48,30.28,0.68,0.0,0.50,3.55,600,81
01026,"Cheese, mozzarella, whole milk",Dairy and Egg Products,50.01,300,22.17,22.35,2.19,0.0,1.03,3.28,627,76
01027,"Cheese, mozzarella, whole milk, low moisture",Dairy and Egg Products,48.38,318,21.60,24.64,2.47,0.0,1.01,2.91,710,75
01028,"Cheese, mozzarella, part skim milk",Dairy and Egg Products,53.78,254,24.26,15.92,2.77,0.0,1.13,3.27,619,84
01029,"Cheese, mozzarella, part skim milk, low moisture",Dairy and Egg Products,46.46,302,25.96,20.03,3.83,0.0,0.60,3.72,652,95
01030,"Cheese, muenster",Dairy and Egg Products,41.77,368,23.41,30.04,1.12,0.0,1.12,3.66,628,134
01031,"Cheese, neufchatel",Dairy and Egg Products,63.11,253,9.15,22.78,3.59,0.0,3.19,1.37,334,152
01032,"Cheese, parmesan, grated",Dairy and Egg Products,20.84,431,38.46,28.61,4.06,0.0,0.90,8.03,1529,125
01033,"Cheese, parmesan, hard",Dairy and Egg Products,29.16,392,35.75,25.83,3.22,0.0,0.80,6.04,1376,92
01034,"Cheese, port de salut",Dairy and Egg Products,45.45,352,23.78,28.20,0.57,0.0,0.57,2.00,534,136
01035,"Cheese, provolone",Dairy and Egg Products,40.95,351,25.58,26.62,2.14,0.0,0.56,4.71,876,138
01036,"Cheese, ricotta, whole milk",Dairy and Egg Products,71.70,174,11.26,12.98,3.04,0.0,0.27,1.02,84,105
01037,"Cheese, ricotta, part skim milk",Dairy and Egg Products,74.41,138,11.39,7.91,5.14,0.0,0.31,1.15,99,125
01038,"Cheese, romano",Dairy and Egg Products,30.91,387,31.80,26.94,3.63,0.0,0.73,6.72,1433,86
01039,"Cheese, roquefort",Dairy and Egg Products,39.38,369,21.54,30.64,2.00,0.0,,6.44,1809,91
01040,"Cheese, swiss",Dairy and Egg Products,37.12,380,26.93,27.80,5.38,0.0,1.32,2.77,70,77
01041,"Cheese, tilsit",Dairy and Egg Products,42.86,340,24.41,25.98,1.88,0.0,,4.87,753,65
01043,"Cheese, pasteurized process, pimento",Dairy and Egg Products,39.08,375,22.13,31.20,1.73,0.1,0.62,5.84,915,162
01044,"Cheese, pasteurized process, swiss",Dairy and Egg Products,42.31,334,24.73,25.01,2.10,0.0,1.23,5.85,1370,216
01047,"Cheese food, pasteurized process, swiss",Dairy and Egg Products,43.67,323,21.92,24.14,4.50,0.0,,5.77,1552,284
01049,"Cream, fluid, half and half",Dairy and Egg Products,80.57,130,2.96,11.50,4.30,0.0,4.30,0.67,41,130
01050,"Cream, fluid, light (coffee cream or table cream)",Dairy and Egg Products,73.75,195,2.70,19.31,3.66,0.0,3.66,0.58,40,122
01052,"Cream, fluid, light whipping",Dairy and Egg Products,63.50,292,2.17,30.91,2.96,0.0,2.96,0.46,34,97
01053,"Cream, fluid, heavy whipping",Dairy and Egg Products,57.71,345,2.05,37.00,2.79,0.0,2.79,0.45,38,75
01054,"Cream, whipped, cream topping, pressurized",Dairy and Egg Products,61.33,257,3.20,22.22,12.49,0.0,8.00,0.76,8,147
01055,"Cream, sour, reduced fat, cultured",Dairy and Egg Products,80.14,135,2.94,12.00,4.26,0.0,0.16,0.66,89,129
01056,"Cream, sour, cultured",Dairy and Egg Products,74.46,193,2.07,19.73,2.88,0.0,2.88,0.85,47,141
01057,Eggnog,Dairy and Egg Products,82.54,88,4.55,4.19,8.05,0.0,8.05,0.67,54,165
01069,"Cream substitute, powdered",Dairy and Egg Products,2.21,545,4.79,35.48,54.88,0.0,54.88,2.64,123,812
01077,"Milk, whole, 3.25% milkfat, with added vitamin D",Dairy and Egg Products,88.13,61,3.15,3.25,4.80,0.0,5.05,0.67,43,132
01078,"Milk, producer, fluid, 3.7% milkfat",Dairy and Egg Products,87.69,64,3.28,3.66,4.65,0.0,,0.72,49,151
01079,"Milk, reduced fat, fluid, 2% milkfat, with added vitamin A and vitamin D",Dairy and Egg Products,89.21,50,3.30,1.98,4.80,0.0,5.06,0.71,47,140
01082,"Milk, lowfat, fluid, 1% milkfat, with added vitamin A and vitamin D",Dairy and Egg Products,89.92,42,3.37,0.97,4.99,0.0,5.20,0.75,44,150
01085,"Milk, nonfat, fluid, with added vitamin A and vitamin D (fat free or skim)",Dairy and Egg Products,90.84,34,3.37,0.08,4.96,0.0,5.09,0.75,42,156
01088,"Milk, buttermilk, fluid, cultured, lowfat",Dairy and Egg Products,90.13,40,3.31,0.88,4.79,0.0,4.79,0.89,190,151
01090,"Milk, dry, whole, with added vitamin D",Dairy and Egg Products,2.47,496,26.32,26.71,38.42,0.0,38.42,6.08,371,1330
01091,"Milk, dry, nonfat, regular, without added vitamin A and vitamin D",Dairy and Egg Products,3.16,362,36.16,0.77,51.98,0.0,51.98,7.93,535,1794
01092,"Milk, dry, nonfat, instant, with added vitamin A and vitamin D",Dairy and Egg Products,3.96,358,35.10,0.72,52.19,0.0,52.19,8.03,549,1705
01094,"Milk, buttermilk, dried",Dairy and Egg Products,2.97,387,34.30,5.78,49.00,0.0,49.00,7.95,517,1592
01095,"Milk, canned, condensed, sweetened",Dairy and Egg Products,27.16,321,7.91,8.70,54.40,0.0,54.40,1.83,127,371
01096,"Milk, canned, evaporated, with added vitamin D and without added vitamin A",Dairy and Egg Products,74.04,134,6.81,7.56,10.04,0.0,10.04,1.55,106,303
01097,"Milk, canned, evaporated, nonfat, with added vitamin A and vitamin D",Dairy and Egg Products,79.40,78,7.55,0.20,11.35,0.0,11.35,1.50,115,332
01102,"Milk, chocolate, fluid, commercial, whole, with added vitamin A and vitamin D",Dairy and Egg Products,82.30,83,3.17,3.39,10.34,0.8,9.54,0.80,60,167
01103,"Milk, chocolate, fluid, commercial, reduced fat, with added vitamin A and vitamin D",Dairy and Egg Products,82.17,76,2.99,1.90,12.13,0.7,9.55,0.81,66,169
01104,"Milk, chocolate, fluid, commercial, lowfat, with added vitamin A and vitamin D",Dairy and Egg Products,82.34,71,3.24,1.00,12.60,0.5,9.94,0.82,61,170
01106,"Milk, goat, fluid, with added vitamin D",Dairy and Egg Products,87.03,69,3.56,4.14,4.45,0.0,4.45,0.82,50,204
01108,"Milk, indian buffalo, fluid",Dairy and Egg Products,83.39,97,3.75,6.89,5.18,0.0,,0.79,52,178
01109,"Milk, sheep, fluid",Dairy and Egg Products,80.70,108,5.98,7.00,5.36,0.0,,0.96,44,137
01112,"Whey, acid, fluid",Dairy and Egg Products,93.42,24,0.76,0.09,5.12,0.0,5.12,0.61,48,143
01113,"Whey, acid, dried",Dairy and Egg Products,3.51,339,11.73,0.54,73.45,0.0,73.45,10.77,968,2289
01114,"Whey, sweet, fluid",Dairy and Egg Products,93.12,27,0.85,0.36,5.14,0.0,5.14,0.53,54,161
01115,"Whey, sweet, dried",Dairy and Egg Products,3.19,353,12.93,1.07,74.46,0.0,74.46,8.35,1079,2080
01116,"Yogurt, plain, whole milk, 8 grams protein per 8 ounce",Dairy and Egg Products,87.90,61,3.47,3.25,4.66,0.0,4.66,0.72,46,155
01117,"Yogurt, plain, low fat, 12 grams protein per 8 ounce",Dairy and Egg Products,85.07,63,5.25,1.55,7.04,0.0,7.04,1.09,70,234
01118,"Yogurt, plain, skim milk, 13 grams protein per 8 ounce",Dairy and Egg Products,85.23,56,5.73,0.18,7.68,0.0,7.68,1.18,77,255
01119,"Yogurt, vanilla, low fat, 11 grams protein per 8 ounce",Dairy and Egg Products,79.00,85,4.93,1.25,13.80,0.0,13.80,1.02,66,219
01120,"Yogurt, fruit, low fat, 9 grams protein per 8 ounce",Dairy and Egg Products,75.30,99,3.98,1.15,18.64,0.0,18.64,0.93,53,177
01121,"Yogurt, fruit, low fat, 10 grams protein per 8 ounce",Dairy and Egg Products,74.48,102,4.37,1.08,19.05,0.0,19.05,1.02,58,195
01122,"Yogurt, fruit, low fat, 11 grams protein per 8 ounce",Dairy and Egg Products,74.10,105,4.86,1.41,18.60,0.0,,1.03,65,216
01123,"Egg, whole, raw, fresh",Dairy and Egg Products,76.15,143,12.56,9.51,0.72,0.0,0.37,1.06,142,138
01124,"Egg, white, raw, fresh",Dairy and Egg Products,87.57,52,10.90,0.17,0.73,0.0,0.71,0.63,166,163
01125,"Egg, yolk, raw, fresh",Dairy and Egg Products,52.31,322,15.86,26.54,3.59,0.0,0.56,1.71,48,109
01126,"Egg, yolk, raw, frozen, pasteurized",Dairy and Egg Products,56.77,299,15.33,25.24,1.30,0.0,0.17,1.37,71,121
01127,"Egg, yolk, raw, frozen, sugared, pasteurized",Dairy and Egg Products,51.23,307,13.87,22.82,10.95,0.0,10.30,1.13,70,105
01128,"Egg, whole, cooked, fried",Dairy and Egg Products,69.47,196,13.61,14.84,0.83,0.0,0.40,1.26,207,152
01129,"Egg, whole, cooked, hard-boiled",Dairy and Egg Products,74.62,155,12.58,10.61,1.12,0.0,1.12,1.08,124,126
01130,"Egg, whole, cooked, omelet",Dairy and Egg Products,76.13,154,10.57,11.66,0.64,0.0,0.31,1.01,155,117
01131,"Egg, whole, cooked, poached",Dairy and Egg Products,75.85,143,12.51,9.47,0.71,0.0,0.37,1.46,297,138
01132,"Egg, whole, cooked, scrambled",Dairy and Egg Products,76.40,149,9.99,10.98,1.61,0.0,1.39,1.01,145,132
01133,"Egg, whole, dried",Dairy and Egg Products,3.67,605,48.37,43.04,1.53,0.0,0.30,3.40,480,540
01134,"Egg, whole, dried, stabilized, glucose reduced",Dairy and Egg Products,1.87,615,48.17,43.95,2.38,0.0,,3.63,548,515
01135,"Egg, white, dried, flakes, stabilized, glucose reduced",Dairy and Egg Products,14.62,351,76.92,0.04,4.17,0.0,0.00,4.25,1156,1042
01136,"Egg, white, dried, powder, stabilized, glucose reduced",Dairy and Egg Products,8.54,376,82.40,0.04,4.47,0.0,0.00,4.55,1238,1116
01137,"Egg, yolk, dried",Dairy and Egg Products,2.73,679,33.73,58.13,2.10,0.0,0.07,3.30,163,264
01138,"Egg, duck, whole, fresh, raw",Dairy and Egg Products,70.83,185,12.81,13.77,1.45,0.0,0.93,1.14,146,222
01139,"Egg, goose, whole, fresh, raw",Dairy and Egg Products,70.43,185,13.87,13.27,1.35,0.0,0.94,1.08,138,210
01140,"Egg, quail, whole, fresh, raw",Dairy and Egg Products,74.35,158,13.05,11.09,0.41,0.0,0.40,1.10,141,132
01141,"Egg, turkey, whole, fresh, raw",Dairy and Egg Products,72.50,171,13.68,11.88,1.15,0.0,,0.79,151,142
01144,"Egg substitute, powder",Dairy and Egg Products,3.86,444,55.50,13.00,21.80,0.0,21.80,5.84,800,744
01145,"Butter, without salt",Dairy and Egg Products,17.94,717,0.85,81.11,0.06,0.0,0.06,0.04,11,24
01146,"Cheese, parmesan, shredded",Dairy and Egg Products,25.00,415,37.86,27.34,3.41,0.0,0.90,6.39,1696,97
01151,"Milk, nonfat, fluid, without added vitamin A and vitamin D (fat free or skim)",Dairy and Egg Products,90.84,34,3.37,0.08,4.96,0.0,5.09,0.75,42,156
01153,"Milk, canned, evaporated, with added vitamin A",Dairy and Egg Products,74.04,134,6.81,7.56,10.04,0.0,,1.55,106,303
01154,"Milk, dry, nonfat, regular, with added vitamin A and vitamin D",Dairy and Egg Products,3.16,362,36.16,0.77,51.98,0.0,51.98,7.93,535,1794
01155,"Milk, dry, nonfat, instant, without added vitamin A and vitamin D",Dairy and Egg Products,3.96,358,35.10,0.72,52.19,0.0,52.19,8.03,549,1705
01156,"Cheese, goat, hard type",Dairy and Egg Products,29.01,452,30.52,35.59,2.17,0.0,2.17,3.72,423,48
01157,"Cheese, goat, semisoft type",Dairy and Egg Products,45.52,364,21.58,29.84,0.12,0.0,0.12,2.94,415,158
01159,"Cheese, goat, soft type",Dairy and Egg Products,60.75,268,18.52,21.08,0.00,0.0,0.89,1.58,459,26
01160,"Egg, yolk, raw, frozen, salted, pasteurized",Dairy and Egg Products,50.87,275,14.07,22.93,1.77,0.0,0.07,10.37,3487,111
01161,"Cheese substitute, mozzarella",Dairy and Egg Products,47.36,248,11.47,12.22,23.67,0.0,23.67,5.27,685,455
01164,"Cheese sauce, prepared from recipe",Dairy and Egg Products,66.86,197,10.33,14.92,5.48,0.1,0.19,2.41,493,142
01165,"Cheese, mexican, queso anejo",Dairy and Egg Products,38.06,373,21.44,29.98,4.63,0.0,4.63,5.89,1131,87
01166,"Cheese, mexican, queso asadero",Dairy and Egg Products,42.16,356,22.60,28.26,2.87,0.0,2.87,4.11,705,86
01167,"Cheese, mexican, queso chihuahua",Dairy and Egg Products,39.13,374,21.56,29.68,5.56,0.0,5.56,4.06,617,52
01168,"Cheese, low fat, cheddar or colby",Dairy and Egg Products,63.10,173,24.35,7.00,1.91,0.0,0.52,3.64,873,66
01171,"Egg, whole, raw, frozen, pasteurized",Dairy and Egg Products,75.20,154,12.03,10.70,1.27,0.0,0.10,0.80,130,135
01172,"Egg, white, raw, frozen, pasteurized",Dairy and Egg Products,88.97,46,9.30,0.04,1.26,0.0,0.20,0.43,169,169
01173,"Egg, white, dried",Dairy and Egg Products,5.80,382,81.10,0.00,7.80,0.0,5.40,5.30,1280,1125
01174,"Milk, reduced fat, fluid, 2% milkfat, without added vitamin A and vitamin D",Dairy and Egg Products,89.21,50,3.30,1.98,4.80,0.0,5.06,0.71,47,140
01175,"Milk, fluid, 1% fat, without added vitamin A and vitamin D",Dairy and Egg Products,89.92,42,3.37,0.97,4.99,0.0,5.20,0.75,44,150
01178,"Sour cream, reduced fat",Dairy and Egg Products,71.00,181,7.00,14.10,7.00,0.0,0.30,0.90,70,211
01179,"Sour cream, light",Dairy and Egg Products,78.10,136,3.50,10.60,7.10,0.0,0.22,0.70,83,212
01180,"Sour cream, fat free",Dairy and Egg Products,80.60,74,3.10,0.00,15.60,0.0,0.39,0.70,141,129
01185,"Parmesan cheese topping, fat free",Dairy and Egg Products,8.60,370,40.00,5.00,40.00,0.0,1.50,6.40,1150,600
01186,"Cheese, cream, fat free",Dairy and Egg Products,71.87,105,15.69,1.00,7.66,0.0,5.48,3.77,702,278
01187,"Yogurt, chocolate, nonfat milk",Dairy and Egg Products,71.57,112,3.53,0.00,23.53,1.2,14.97,1.37,135,339
01199,"Cream, half and half, fat free",Dairy and Egg Products,86.00,59,2.60,1.40,9.00,0.0,5.00,1.00,100,206
01202,"Milk, chocolate, fluid, commercial, reduced fat, with added calcium",Dairy and Egg Products,82.17,78,2.99,1.90,12.13,0.7,9.55,0.81,66,123
01204,"Cheese, parmesan, dry grated, reduced fat",Dairy and Egg Products,50.60,265,20.00,20.00,1.37,0.0,0.00,8.03,1529,125
01208,"Cheese, provolone, reduced fat",Dairy and Egg Products,50.60,274,24.70,17.60,3.50,0.0,0.55,3.60,615,138
01209,"Cheese, Mexican, blend, reduced fat",Dairy and Egg Products,48.20,282,24.69,19.40,3.41,0.0,0.56,4.30,776,93
01211,"Milk, whole, 3.25% milkfat, without added vitamin A and vitamin D",Dairy and Egg Products,88.13,61,3.15,3.27,4.78,0.0,5.05,0.67,43,132
01212,"Milk, dry, whole, without added vitamin D",Dairy and Egg Products,2.47,496,26.32,26.71,38.42,0.0,38.42,6.08,371,1330
01214,"Milk, canned, evaporated, without added vitamin A and vitamin D",Dairy and Egg Products,74.04,135,6.81,7.56,10.04,0.0,10.04,1.55,106,303
01225,Dulce de Leche,Dairy and Egg Products,28.71,315,6.84,7.35,55.35,0.0,49.74,1.74,129,350
01227,"Cheese, dry white, queso seco",Dairy and Egg Products,42.17,325,24.51,24.35,2.04,,0.55,6.93,1808,116
01228,"Cheese, fresh, queso fresco",Dairy and Egg Products,51.42,299,18.09,23.82,2.98,0.0,2.32,3.68,751,129
01229,"Cheese, white, queso blanco",Dairy and Egg Products,48.70,310,20.38,24.31,2.53,,1.76,4.07,704,126
01230,"Milk, buttermilk, fluid, whole",Dairy and Egg Products,87.91,62,3.21,3.31,4.88,0.0,4.88,0.68,105,135
01251,"Cheese, Mexican blend",Dairy and Egg Products,42.48,358,23.54,28.51,1.75,0.0,1.23,3.72,338,85
01255,"Egg, whole, raw, frozen, salted, pasteurized",Dairy and Egg Products,67.83,138,10.97,10.07,0.83,0.0,0.07,10.30,3663,128
01256,"Yogurt, Greek, plain, nonfat",Dairy and Egg Products,85.10,59,10.19,0.39,3.60,0.0,3.24,0.72,36,141
01258,"Egg, white, dried, stabilized, glucose reduced",Dairy and Egg Products,6.53,362,84.63,0.48,4.72,0.0,0.00,3.63,1014,884
01260,"Cheese, cheddar, reduced fat",Dairy and Egg Products,44.29,309,27.35,20.41,4.06,0.0,0.26,3.89,628,63
01265,"Cheese, cheddar, nonfat or fat free",Dairy and Egg Products,57.00,157,32.14,0.00,7.14,0.0,0.00,3.64,1000,66
01266,"Cheese, Swiss, nonfat or fat free",Dairy and Egg Products,63.60,127,28.40,0.00,3.40,0.0,1.33,4.50,1000,111
01267,Queso cotija,Dairy and Egg Products,38.00,366,20.00,30.00,3.97,0.0,0.00,8.03,1400,125
02001,"Spices, allspice, ground",Spices and Herbs,8.46,263,6.09,8.69,72.12,21.6,,4.65,77,1044
02002,"Spices, anise seed",Spices and Herbs,9.54,337,17.60,15.90,50.02,14.6,,6.95,16,1441
02003,"Spices, basil, dried",Spices and Herbs,10.35,233,22.98,4.07,47.75,37.7,1.71,14.85,76,2630
02004,"Spices, bay leaf",Spices and Herbs,5.44,313,7.61,8.36,74.97,26.3,,3.62,23,529
02005,"Spices, caraway seed",Spices and Herbs,9.87,333,19.77,14.59,49.90,38.0,0.64,5.87,17,1351
02006,"Spices, cardamom",Spices and Herbs,8.28,311,10.76,6.70,68.47,28.0,,5.78,18,1119
02007,"Spices, celery seed",Spices and Herbs,6.04,392,18.07,25.27,41.35,11.8,0.67,9.27,160,1400
02008,"Spices, chervil, dried",Spices and Herbs,7.20,237,23.20,3.90,49.10,11.3,,16.60,83,4740
02009,"Spices, chili powder",Spices and Herbs,10.75,282,13.46,14.28,49.70,34.8,7.19,11.81,4000,1950
02010,"Spices, cinnamon, ground",Spices and Herbs,10.58,247,3.99,1.24,80.59,53.1,2.17,3.60,10,431
02011,"Spices, cloves, ground",Spices and Herbs,9.87,274,5.97,13.00,65.53,33.9,2.38,5.63,277,1020
02012,"Spices, coriander leaf, dried",Spices and Herbs,7.30,279,21.93,4.78,52.10,10.4,7.27,14.08,211,4466
02013,"Spices, coriander seed",Spices and Herbs,8.86,298,12.37,17.77,54.99,41.9,,6.02,35,1267
02014,"Spices, cumin seed",Spices and Herbs,8.06,375,17.81,22.27,44.24,10.5,2.25,7.62,168,1788
02015,"Spices, curry powder",Spices and Herbs,8.80,325,14.29,14.01,55.83,53.2,2.76,7.07,52,1170
02016,"Spices, dill seed",Spices and Herbs,7.70,305,15.98,14.54,55.17,21.1,,6.62,20,1186
02017,"Spices, dill weed, dried",Spices and Herbs,7.30,253,19.96,4.36,55.82,13.6,,12.56,208,3308
02018,"Spices, fennel seed",Spices and Herbs,8.81,345,15.80,14.87,52.29,39.8,,8.22,88,1694
02019,"Spices, fenugreek seed",Spices and Herbs,8.84,323,23.00,6.41,58.35,24.6,,3.40,67,770
02020,"Spices, garlic powder",Spices and Herbs,6.45,331,16.55,0.73,72.73,9.0,2.43,3.54,60,1193
02021,"Spices, ginger, ground",Spices and Herbs,9.94,335,8.98,4.24,71.62,14.1,3.39,5.22,27,1320
02022,"Spices, mace, ground",Spices and Herbs,8.17,475,6.71,32.38,50.50,20.2,,2.23,80,463
02023,"Spices, marjoram, dried",Spices and Herbs,7.64,271,12.66,7.04,60.56,40.3,4.09,12.10,77,1522
02024,"Spices, mustard seed, ground",Spices and Herbs,5.27,508,26.08,36.24,28.09,12.2,6.79,4.33,13,738
02025,"Spices, nutmeg, ground",Spices and Herbs,6.23,525,5.84,36.31,49.29,20.8,28.49,2.34,16,350
02026,"Spices, onion powder",Spices and Herbs,5.39,341,10.41,1.04,79.12,15.2,6.63,4.04,73,985
02027,"Spices, oregano, dried",Spices and Herbs,9.93,265,9.00,4.28,68.92,42.5,4.09,7.87,25,1260
02028,"Spices, paprika",Spices and Herbs,11.24,282,14.14,12.89,53.99,34.9,10.34,7.74,68,2280
02029,"Spices, parsley, dried",Spices and Herbs,5.89,292,26.63,5.48,50.64,26.7,7.27,11.36,452,2683
02030,"Spices, pepper, black",Spices and Herbs,12.46,251,10.39,3.26,63.95,25.3,0.64,4.49,20,1329
02031,"Spices, pepper, red or cayenne",Spices and Herbs,8.05,318,12.01,17.27,56.63,27.2,10.34,6.04,30,2014
02032,"Spices, pepper, white",Spices and Herbs,11.42,296,10.40,2.12,68.61,26.2,,1.59,5,73
02033,"Spices, poppy seed",Spices and Herbs,5.95,525,17.99,41.56,28.13,19.5,2.99,6.37,26,719
02034,"Spices, poultry seasoning",Spices and Herbs,9.31,307,9.59,7.53,65.59,11.3,3.08,5.92,27,684
02035,"Spices, pumpkin pie spice",Spices and Herbs,8.46,342,5.76,12.60,69.28,14.8,7.76,3.90,52,663
02036,"Spices, rosemary, dried",Spices and Herbs,9.31,331,4.88,15.22,64.06,42.6,,6.53,50,955
02037,"Spices, saffron",Spices and Herbs,11.90,310,11.43,5.85,65.37,3.9,,5.45,148,1724
02038,"Spices, sage, ground",Spices and Herbs,7.96,315,10.63,12.75,60.73,40.3,1.71,7.95,11,1070
02039,"Spices, savory, ground",Spices and Herbs,9.00,272,6.73,5.91,68.73,45.7,,9.63,24,1051
02041,"Spices, tarragon, dried",Spices and Herbs,7.74,295,22.77,7.24,50.22,7.4,,12.03,62,3020
02042,"Spices, thyme, dried",Spices and Herbs,7.79,276,9.11,7.43,63.94,37.0,1.71,11.74,55,814
02043,"Spices, turmeric, ground",Spices and Herbs,12.85,312,9.68,3.25,67.14,22.7,3.21,7.08,27,2080
02044,"Basil, fresh",Spices and Herbs,92.06,23,3.15,0.64,2.65,1.6,0.30,1.49,4,295
02045,"Dill weed, fresh",Spices and Herbs,85.95,43,3.46,1.12,7.02,2.1,,2.45,61,738
02046,"Mustard, prepared, yellow",Spices and Herbs,82.65,67,4.37,4.01,5.33,3.3,0.86,3.64,1135,138
02047,"Salt, table",Spices and Herbs,0.20,0,0.00,0.00,0.00,0.0,0.00,99.80,38758,8
02048,"Vinegar, cider",Spices and Herbs,93.81,21,0.00,0.00,0.93,0.0,0.40,0.17,5,73
02049,"Thyme, fresh",Spices and Herbs,65.11,101,5.56,1.68,24.45,14.0,,3.20,9,609
02050,Vanilla extract,Spices and Herbs,52.58,288,0.06,0.06,12.65,0.0,12.65,0.26,9,148
02053,"Vinegar, distilled",Spices and Herbs,94.78,18,0.00,0.00,0.04,0.0,0.04,0.00,2,2
02054,"Capers, canned",Spices and Herbs,83.85,23,2.36,0.86,4.89,3.2,0.41,8.04,2769,40
02055,"Horseradish, prepared",Spices and Herbs,85.08,48,1.18,0.69,11.29,3.3,7.99,1.76,420,246
02063,"Rosemary, fresh",Spices and Herbs,67.77,131,3.31,5.86,20.70,14.1,,2.35,26,668
02064,"Peppermint, fresh",Spices and Herbs,78.65,70,3.75,0.94,14.89,8.0,,1.76,31,569
02065,"Spearmint, fresh",Spices and Herbs,85.55,44,3.29,0.73,8.41,6.8,,2.03,30,458
02066,"Spearmint, dried",Spices and Herbs,11.30,285,19.93,6.03,52.04,29.8,,10.70,344,1924
02068,"Vinegar, red wine",Spices and Herbs,94.47,19,0.04,0.00,0.27,0.0,0.00,0.17,8,39
02069,"Vinegar, balsamic",Spices and Herbs,76.45,88,0.49,0.00,17.03,,14.95,0.37,23,112
02074,"Seasoning mix, dry, sazon, coriander & annatto",Spices and Herbs,0.20,0,0.00,0.00,0.00,0.0,0.00,99.80,17000,
02075,"Seasoning mix, dry, taco, original",Spices and Herbs,5.70,322,4.50,0.00,58.00,13.3,10.83,31.80,7203,1000
02076,"Seasoning mix, dry, chili, original",Spices and Herbs,10.75,335,10.82,7.30,56.56,10.8,8.67,14.56,4616,
04001,"Fat, beef tallow",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04002,Lard,Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04016,"Salad dressing, sesame seed dressing, regular",Fats and Oils,39.20,443,3.10,45.20,8.60,1.0,8.32,3.90,1000,157
04018,"Salad dressing, mayonnaise type, regular, with salt",Fats and Oils,39.90,390,0.90,33.40,23.90,0.0,6.40,1.90,711,9
04025,"Salad dressing, mayonnaise, regular",Fats and Oils,21.65,680,0.96,74.85,0.57,0.0,0.57,1.98,635,20
04026,"Salad dressing, mayonnaise, soybean and safflower oil, with salt",Fats and Oils,15.30,717,1.10,79.40,2.70,0.0,0.48,1.50,568,34
04031,"Shortening, household, soybean (partially hydrogenated)-cottonseed (partially hydrogenated)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04034,"Oil, soybean, salad or cooking, (partially hydrogenated)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04037,"Oil, rice bran",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04038,"Oil, wheat germ",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04042,"Oil, peanut, salad or cooking",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04044,"Oil, soybean, salad or cooking",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04047,"Oil, coconut",Fats and Oils,0.00,862,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04053,"Oil, olive, salad or cooking",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,2,1
04055,"Oil, palm",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04058,"Oil, sesame, salad or cooking",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04060,"Oil, sunflower, linoleic (less than 60%)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04073,"Margarine, regular, hard, soybean (hydrogenated)",Fats and Oils,15.70,719,0.90,80.50,0.90,0.0,0.00,2.00,943,42
04114,"Salad dressing, italian dressing, commercial, regular",Fats and Oils,63.40,240,0.41,21.12,12.12,0.0,10.77,2.95,993,84
04120,"Salad dressing, french dressing, commercial, regular",Fats and Oils,36.56,457,0.77,44.81,15.58,0.0,15.95,2.29,836,67
04133,"Salad dressing, french, home recipe",Fats and Oils,24.20,631,0.10,70.20,3.40,0.0,,1.80,658,24
04135,"Salad dressing, home recipe, vinegar and oil",Fats and Oils,47.40,449,0.00,50.10,2.50,0.0,2.50,0.00,1,8
04141,"Salad dressing, french dressing, commercial, regular, without salt",Fats and Oils,36.56,459,0.77,44.81,15.58,0.0,15.95,2.29,0,67
04143,"Salad dressing, italian dressing, commercial, regular, without salt",Fats and Oils,56.40,292,0.38,28.37,10.43,0.0,8.32,4.42,30,48
04145,"Salad dressing, mayonnaise, soybean oil, without salt",Fats and Oils,16.70,717,1.10,79.40,2.70,0.0,,0.10,30,34
04146,"Salad dressing, french, cottonseed, oil, home recipe",Fats and Oils,24.20,631,0.10,70.20,3.40,0.0,,1.80,658,24
04501,"Oil, cocoa butter",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04502,"Oil, cottonseed, salad or cooking",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04506,"Oil, sunflower, linoleic, (approx. 65%)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04510,"Oil, safflower, salad or cooking, linoleic, (over 70%)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04511,"Oil, safflower, salad or cooking, high oleic (primary safflower oil of commerce)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04513,"Vegetable oil, palm kernel",Fats and Oils,0.00,862,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04514,"Oil, poppyseed",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04517,"Oil, grapeseed",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04520,"Fat, mutton tallow",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04528,"Oil, walnut",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04529,"Oil, almond",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04531,"Oil, soybean lecithin",Fats and Oils,0.00,763,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04532,"Oil, hazelnut",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04539,"Salad dressing, blue or roquefort cheese dressing, commercial, regular",Fats and Oils,39.71,484,1.37,51.10,4.77,0.4,3.48,3.20,642,88
04542,"Fat, chicken",Fats and Oils,0.20,900,0.00,99.80,0.00,0.0,0.00,0.00,0,0
04543,"Oil, soybean, salad or cooking, (partially hydrogenated) and cottonseed",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04544,"Shortening, household, lard and vegetable oil",Fats and Oils,0.00,900,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04545,"Oil, sunflower, linoleic, (partially hydrogenated)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04559,Shortening household soybean (hydrogenated) and palm,Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,,0.00,0,0
04574,"Fat, duck",Fats and Oils,0.20,882,0.00,99.80,0.00,0.0,0.00,0.00,0,0
04575,"Fat, turkey",Fats and Oils,0.20,900,0.00,99.80,0.00,0.0,0.00,0.00,0,0
04576,"Fat, goose",Fats and Oils,0.20,900,0.00,99.80,0.00,0.0,,0.00,0,0
04581,"Oil, avocado",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,,0.00,0,0
04582,"Oil, canola",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04583,"Oil, mustard",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,,0.00,0,0
04584,"Oil, sunflower, high oleic (70% and over)",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04588,"Oil, oat",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
04589,"Fish oil, cod liver",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,,0.00,0,0
04590,"Fish oil, herring",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,,0.00,0,0
04593,"Fish oil, salmon",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,,0.00,0,0
04594,"Fish oil, sardine",Fats and Oils,0.00,902,0.00,100.00,0.00,0.0,,0.00,0,0
04606,"Meat drippings (lard, beef tallow, mutton tallow)",Fats and Oils,0.00,889,0.00,98.59,0.00,0.0,0.00,1.40,545,0
04609,"Animal fat, bacon grease",Fats and Oils,0.00,897,0.00,99.50,0.00,0.0,0.00,0.50,150,0
04610,"Margarine, regular, 80% fat, composite, stick, with salt",Fats and Oils,16.52,717,0.16,80.71,0.70,0.0,0.00,1.92,751,18
04611,"Margarine, regular, 80% fat, composite, tub, with salt",Fats and Oils,17.07,713,0.22,80.17,0.75,0.0,0.00,1.78,657,17
04615,"Shortening, vegetable, household, composite",Fats and Oils,0.00,884,0.00,99.97,0.00,0.0,0.00,0.03,4,0
04617,"Margarine, regular, 80% fat, composite, stick, without salt",Fats and Oils,16.52,717,0.16,80.71,0.70,0.0,0.00,1.92,2,18
04618,"Margarine, regular, 80% fat, composite, tub, without salt",Fats and Oils,17.07,713,0.22,80.17,0.75,0.0,0.00,1.78,28,17
04628,"Margarine, 80% fat, stick, includes regular and hydrogenated corn and soybean oils",Fats and Oils,16.52,717,0.16,80.71,0.70,0.0,,1.92,654,18
04630,"Margarine Spread, approximately 48% fat, tub",Fats and Oils,49.66,424,0.20,47.53,0.86,0.0,,1.75,646,36
04639,"Salad dressing, ranch dressing, commercial, regular",Fats and Oils,45.85,421,1.32,44.54,5.74,0.0,4.69,2.56,901,64
04691,"Margarine, regular, 80% fat, composite, stick, with salt, with added vitamin D",Fats and Oils,16.52,717,0.16,80.71,0.70,0.0,0.00,1.92,751,18
04692,"Margarine, regular, 80% fat, composite, tub, with salt, with added vitamin D",Fats and Oils,17.07,713,0.22,80.17,0.75,0.0,0.00,1.78,657,17
04696,"Margarine, regular, 80% fat, composite, stick, without salt, with added vitamin D",Fats and Oils,16.52,717,0.16,80.71,0.70,0.0,0.00,1.92,2,18
04707,"Oil, flaxseed, contains added sliced flaxseed",Fats and Oils,0.16,878,0.37,99.01,0.39,,,0.07,6,31
05006,"Chicken, broilers or fryers, meat and skin, raw",Poultry Products,65.99,215,18.60,15.06,0.00,0.0,0.00,0.79,70,189
05007,"Chicken, broilers or fryers, meat and skin, cooked, fried, batter",Poultry Products,49.39,289,22.54,17.35,9.42,0.3,0.00,1.30,292,185
05008,"Chicken, broilers or fryers, meat and skin, cooked, fried, flour",Poultry Products,52.41,269,28.56,14.92,3.15,0.1,0.00,0.98,84,234
05009,"Chicken, broilers or fryers, meat and skin, cooked, roasted",Poultry Products,59.45,239,27.30,13.60,0.00,0.0,0.00,0.92,82,223
05010,"Chicken, broilers or fryers, meat and skin, cooked, stewed",Poultry Products,63.93,219,24.68,12.56,0.00,0.0,0.00,0.76,67,166
05011,"Chicken, broilers or fryers, meat only, raw",Poultry Products,75.46,119,21.39,3.08,0.00,0.0,0.00,0.96,77,229
05012,"Chicken, broilers or fryers, meat only, cooked, fried",Poultry Products,57.53,219,30.57,9.12,1.69,0.1,0.00,1.09,91,257
05013,"Chicken, broilers or fryers, meat only, roasted",Poultry Products,63.79,190,28.93,7.41,0.00,0.0,0.00,1.02,86,243
05014,"Chicken, broilers or fryers, meat only, stewed",Poultry Products,66.81,177,27.29,6.71,0.00,0.0,0.00,0.85,70,180
05015,"Chicken, broilers or fryers, skin only, raw",Poultry Products,54.22,349,13.33,32.35,0.00,0.0,0.00,0.41,63,103
05016,"Chicken, broilers or fryers, skin only, cooked, fried, batter",Poultry Products,36.11,394,10.32,28.83,23.15,,,1.59,581,75
05017,"Chicken, broilers or fryers, skin only, cooked, fried, flour",Poultry Products,28.54,502,19.09,42.58,9.34,,,0.45,53,125
05018,"Chicken, broilers or fryers, skin only, cooked, roasted",Poultry Products,40.29,454,20.36,40.68,0.00,0.0,0.00,0.50,65,136
05019,"Chicken, broilers or fryers, skin only, cooked, stewed",Poultry Products,53.27,363,15.22,33.04,0.00,0.0,,0.43,56,117
05023,"Chicken, gizzard, all classes, raw",Poultry Products,79.33,94,17.66,2.06,0.00,0.0,0.00,0.95,69,237
05024,"Chicken, gizzard, all classes, cooked, simmered",Poultry Products,67.93,154,30.39,2.68,0.00,0.0,0.00,0.89,56,179
05025,"Chicken, heart, all classes, raw",Poultry Products,73.56,153,15.55,9.33,0.71,0.0,,0.85,74,176
05026,"Chicken, heart, all classes, cooked, simmered",Poultry Products,64.85,185,26.41,7.92,0.10,0.0,,0.72,48,132
05027,"Chicken, liver, all classes, raw",Poultry Products,76.46,119,16.92,4.83,0.73,0.0,0.00,1.06,71,230
05028,"Chicken, liver, all classes, cooked, simmered",Poultry Products,66.81,167,24.46,6.51,0.87,0.0,0.00,1.36,76,263
05029,"Chicken, broilers or fryers, light meat, meat and skin, raw",Poultry Products,68.60,186,20.27,11.07,0.00,0.0,0.00,0.86,65,204
05030,"Chicken, broilers or fryers, light meat, meat and skin, cooked, fried, batter",Poultry Products,50.23,277,23.55,15.44,9.50,,,1.29,287,185
05031,"Chicken, broilers or fryers, light meat, meat and skin, cooked, fried, flour",Poultry Products,54.66,246,30.45,12.09,1.82,0.1,0.00,0.98,77,239
05032,"Chicken, broilers or fryers, light meat, meat and skin, cooked, roasted",Poultry Products,60.51,222,29.02,10.85,0.00,0.0,,0.93,75,227
05033,"Chicken, broilers or fryers, light meat, meat and skin, cooked, stewed",Poultry Products,65.13,201,26.14,9.97,0.00,0.0,,0.78,63,167
05034,"Chicken, broilers or fryers, dark meat, meat and skin, raw",Poultry Products,65.42,237,16.69,18.34,0.00,0.0,0.00,0.76,73,178
05035,"Chicken, broilers or fryers, dark meat, meat and skin, cooked, fried, batter",Poultry Products,48.82,298,21.85,18.64,9.38,,,1.31,295,185
05036,"Chicken, broilers or fryers, dark meat, meat and skin, cooked, fried, flour",Poultry Products,50.82,285,27.22,16.91,4.08,0.0,0.00,0.97,89,230
05037,"Chicken, broilers or fryers, dark meat, meat and skin, cooked, roasted",Poultry Products,58.63,253,25.97,15.78,0.00,0.0,,0.92,87,220
05038,"Chicken, broilers or fryers, dark meat, meat and skin, cooked, stewed",Poultry Products,62.99,233,23.50,14.66,0.00,0.0,,0.74,70,166
05039,"Chicken, broilers or fryers, light meat, meat only, raw",Poultry Products,74.86,114,23.20,1.65,0.00,0.0,0.00,0.98,68,239
05040,"Chicken, broilers or fryers, light meat, meat only, cooked, fried",Poultry Products,60.14,192,32.82,5.54,0.42,0.0,,1.09,81,263
05041,"Chicken, broilers or fryers, light meat, meat only, cooked, roasted",Poultry Products,64.76,173,30.91,4.51,0.00,0.0,0.00,1.02,77,247
05042,"Chicken, broilers or fryers, light meat, meat only, cooked, stewed",Poultry Products,68.02,159,28.88,3.99,0.00,0.0,0.00,0.87,65,180
05043,"Chicken, broilers or fryers, dark meat, meat only, raw",Poultry Products,75.99,125,20.08,4.31,0.00,0.0,0.00,0.94,85,222
05044,"Chicken, broilers or fryers, dark meat, meat only, cooked, fried",Poultry Products,55.70,239,28.99,11.62,2.59,0.0,,1.08,97,253
05045,"Chicken, broilers or fryers, dark meat, meat only, cooked, roasted",Poultry Products,63.06,205,27.37,9.73,0.00,0.0,0.00,1.02,93,240
05046,"Chicken, broilers or fryers, dark meat, meat only, cooked, stewed",Poultry Products,65.83,192,25.97,8.98,0.00,0.0,0.00,0.84,74,181
05057,"Chicken, broilers or fryers, breast, meat and skin, raw",Poultry Products,69.46,172,20.85,9.25,0.00,0.0,0.00,1.01,63,220
05058,"Chicken, broilers or fryers, breast, meat and skin, cooked, fried, batter",Poultry Products,51.64,260,24.84,13.20,8.99,0.3,0.00,1.33,275,201
05059,"Chicken, broilers or fryers, breast, meat and skin, cooked, fried, flour",Poultry Products,56.59,222,31.84,8.87,1.64,0.1,,1.06,76,259
05060,"Chicken, broilers or fryers, breast, meat and skin, cooked, roasted",Poultry Products,62.44,197,29.80,7.78,0.00,0.0,0.00,0.99,71,245
05061,"Chicken, broilers or fryers, breast, meat and skin, cooked, stewed",Poultry Products,66.21,184,27.39,7.42,0.00,0.0,0.00,0.84,62,178
05062,"Chicken, broiler or fryers, breast, skinless, boneless, meat only, raw",Poultry Products,73.90,120,22.50,2.62,0.00,0.0,0.00,1.13,45,334
05063,"Chicken, broilers or fryers, breast, meat only, cooked, fried",Poultry Products,60.21,187,33.44,4.71,0.51,0.0,0.00,1.14,79,276
05064,"Chicken, broilers or fryers, breast, meat only, cooked, roasted",Poultry Products,65.26,165,31.02,3.57,0.00,0.0,0.00,1.06,74,256
05065,"Chicken, broilers or fryers, breast, meat only, cooked, stewed",Poultry Products,68.27,151,28.98,3.03,0.00,0.0,0.00,0.91,63,187
05066,"Chicken, broilers or fryers, drumstick, meat and skin, raw",Poultry Products,72.46,161,18.08,9.20,0.11,0.0,0.00,0.86,106,211
05067,"Chicken, broilers or fryers, drumstick, meat and skin, cooked, fried, batter",Poultry Products,52.77,268,21.95,15.75,8.28,0.3,,1.25,269,186
05068,"Chicken, broilers or fryers, drumstick, meat and skin, cooked, fried, flour",Poultry Products,56.73,245,26.96,13.72,1.63,0.1,,0.96,89,229
05069,"Chicken, broilers or fryers, drumstick, meat and skin, cooked, roasted",Poultry Products,66.39,191,23.35,10.15,0.00,0.0,0.00,1.02,123,247
05070,"Chicken, broilers or fryers, drumstick, meat and skin, cooked, stewed",Poultry Products,65.12,204,25.32,10.64,0.00,0.0,0.00,0.82,76,184
05071,"Chicken, broilers or fryers, dark meat, drumstick, meat only, raw",Poultry Products,76.78,116,19.41,3.71,0.00,0.0,0.00,0.92,114,225
05072,"Chicken, broilers or fryers, drumstick, meat only, cooked, fried",Poultry Products,62.24,195,28.62,8.08,0.00,0.0,,1.06,96,249
05073,"Chicken, broilers or fryers, dark meat, drumstick, meat only, cooked, roasted",Poultry Products,69.93,155,24.24,5.70,0.00,0.0,0.00,1.06,128,256
05074,"Chicken, broilers or fryers, drumstick, meat only, cooked, stewed",Poultry Products,67.58,169,27.50,5.71,0.00,0.0,0.00,0.91,80,199
05075,"Chicken, broilers or fryers, leg, meat and skin, raw",Poultry Products,67.30,214,16.37,15.95,0.17,0.0,0.00,0.81,84,203
05076,"Chicken, broilers or fryers, leg, meat and skin, cooked, fried, batter",Poultry Products,52.08,273,21.77,16.17,8.72,0.3,,1.26,279,189
05077,"Chicken, broilers or fryers, leg, meat and skin, cooked, fried, flour",Poultry Products,55.28,254,26.84,14.43,2.50,0.1,,0.95,88,233
05078,"Chicken, broilers or fryers, leg, meat and skin, cooked, roasted",Poultry Products,66.74,184,24.03,8.99,0.00,0.0,0.00,1.02,98,264
05079,"Chicken, broilers or fryers, leg, meat and skin, cooked, stewed",Poultry Products,64.01,220,24.17,12.92,0.00,0.0,0.00,0.79,73,176
05080,"Chicken, broilers or fryers, leg, meat only, raw",Poultry Products,76.41,120,19.16,4.22,0.00,0.0,0.00,0.95,96,238
05081,"Chicken, broilers or fryers, leg, meat only, cooked, fried",Poultry Products,60.61,208,28.38,9.32,0.65,0.0,,1.05,96,254
05082,"Chicken, broilers or fryers, leg, meat only, cooked, roasted",Poultry Products,67.69,174,24.22,7.80,0.00,0.0,0.00,1.04,99,269
05083,"Chicken, broilers or fryers, leg, meat only, cooked, stewed",Poultry Products,66.44,185,26.26,8.06,0.00,0.0,0.00,0.88,78,190
05091,"Chicken, broilers or fryers, thigh, meat and skin, raw",Poultry Products,66.47,221,16.52,16.61,0.25,0.0,0.00,0.81,81,204
05092,"Chicken, broilers or fryers, thigh, meat and skin, cooked, fried, batter",Poultry Products,51.50,277,21.61,16.53,9.08,0.3,,1.27,288,192
05093,"Chicken, broilers or fryers, thigh, meat and skin, cooked, fried, flour",Poultry Products,54.14,262,26.75,14.98,3.18,0.1,,0.94,88,237
05094,"Chicken, broilers or fryers, thigh, meat and skin, cooked, roasted",Poultry Products,61.96,232,23.26,14.71,0.00,0.0,0.00,0.98,102,253
05095,"Chicken, broilers or fryers, thigh, meat and skin, cooked, stewed",Poultry Products,63.11,232,23.26,14.74,0.00,0.0,0.00,0.78,71,170
05096,"Chicken, broilers or fryers, dark meat, thigh, meat only, raw",Poultry Products,76.22,121,19.66,4.12,0.00,0.0,0.00,0.95,95,242
05097,"Chicken, broilers or fryers, thigh, meat only, cooked, fried",Poultry Products,59.31,218,28.18,10.30,1.18,0.0,,1.04,95,259
05098,"Chicken, broilers or fryers, thigh, meat only, cooked, roasted",Poultry Products,67.00,179,24.76,8.15,0.00,0.0,0.00,1.04,106,269
05099,"Chicken, broilers or fryers, thigh, meat only, cooked, stewed",Poultry Products,65.59,195,25.00,9.79,0.00,0.0,0.00,0.86,75,183
05100,"Chicken, broilers or fryers, wing, meat and skin, raw",Poultry Products,69.19,191,17.52,12.85,0.00,0.0,0.00,0.74,84,187
05101,"Chicken, broilers or fryers, wing, meat and skin, cooked, fried, batter",Poultry Products,46.21,324,19.87,21.81,10.94,0.3,,1.17,320,138
05102,"Chicken, broilers or fryers, wing, meat and skin, cooked, fried, flour",Poultry Products,48.62,321,26.11,22.16,2.39,0.1,,0.72,77,177
05103,"Chicken, broilers or fryers, wing, meat and skin, cooked, roasted",Poultry Products,59.40,254,23.79,16.87,0.00,0.0,0.00,0.88,98,212
05104,"Chicken, broilers or fryers, wing, meat and skin, cooked, stewed",Poultry Products,62.18,249,22.78,16.82,0.00,0.0,0.00,0.62,67,139
05105,"Chicken, broilers or fryers, wing, meat only, raw",Poultry Products,74.95,126,21.97,3.54,0.00,0.0,0.00,0.83,81,194
05106,"Chicken, broilers or fryers, wing, meat only, cooked, fried",Poultry Products,59.83,211,30.15,9.15,0.00,0.0,,0.87,91,208
05107,"Chicken, broilers or fryers, wing, meat only, cooked, roasted",Poultry Products,62.78,203,30.46,8.13,0.00,0.0,0.00,0.89,92,210
05108,"Chicken, broilers or fryers, wing, meat only, cooked, stewed",Poultry Products,67.01,181,27.18,7.18,0.00,0.0,0.00,0.73,73,153
05112,"Chicken, roasting, meat and skin, cooked, roasted",Poultry Products,62.10,223,23.97,13.39,0.00,0.0,,0.86,73,211
05113,"Chicken, roasting, meat only, raw",Poultry Products,74.94,111,20.33,2.70,0.00,0.0,0.00,1.07,75,238
05114,"Chicken, roasting, meat only, cooked, roasted",Poultry Products,67.41,167,25.01,6.63,0.00,0.0,,0.95,75,229
05117,"Chicken, roasting, light meat, meat only, raw",Poultry Products,74.30,109,22.20,1.63,0.00,0.0,0.00,1.10,51,252
05118,"Chicken, roasting, light meat, meat only, cooked, roasted",Poultry Products,67.85,153,27.13,4.07,0.00,0.0,0.00,0.95,51,236
05119,"Chicken, roasting, dark meat, meat only, raw",Poultry Products,75.48,113,18.74,3.61,0.00,0.0,0.00,1.04,95,227
05120,"Chicken, roasting, dark meat, meat only, cooked, roasted",Poultry Products,67.05,178,23.25,8.75,0.00,0.0,,0.94,95,224
05123,"Chicken, stewing, meat and skin, raw",Poultry Products,61.84,258,17.55,20.33,0.00,0.0,0.00,1.04,71,204
05124,"Chicken, stewing, meat and skin, cooked, stewed",Poultry Products,53.07,285,26.88,18.87,0.00,0.0,,1.18,73,182
05125,"Chicken, stewing, meat only, raw",Poultry Products,72.54,148,21.26,6.32,0.00,0.0,0.00,1.27,79,251
05126,"Chicken, stewing, meat only, cooked, stewed",Poultry Products,56.35,237,30.42,11.89,0.00,0.0,0.00,1.35,78,202
05129,"Chicken, stewing, light meat, meat only, raw",Poultry Products,73.24,137,23.10,4.21,0.00,0.0,0.00,1.10,53,261
05130,"Chicken, stewing, light meat, meat only, cooked, stewed",Poultry Products,57.79,213,33.04,7.98,0.00,0.0,,1.19,58,199
05131,"Chicken, stewing, dark meat, meat only, raw",Poultry Products,71.94,157,19.70,8.12,0.00,0.0,0.00,1.41,101,242
05132,"Chicken, stewing, dark meat, meat only, cooked, stewed",Poultry Products,55.09,258,28.14,15.28,0.00,0.0,,1.49,95,204
05139,"Duck, domesticated, meat and skin, raw",Poultry Products,48.50,404,11.49,39.34,0.00,0.0,0.00,0.68,63,209
05140,"Duck, domesticated, meat and skin, cooked, roasted",Poultry Products,51.84,337,18.99,28.35,0.00,0.0,0.00,0.82,59,204
05141,"Duck, domesticated, meat only, raw",Poultry Products,73.77,135,18.28,5.95,0.94,0.0,0.00,1.06,74,271
05142,"Duck, domesticated, meat only, cooked, roasted",Poultry Products,64.22,201,23.48,11.20,0.00,0.0,0.00,1.11,65,252
05143,"Duck, domesticated, liver, raw",Poultry Products,71.78,136,18.74,4.64,3.53,0.0,,1.32,140,230
05144,"Duck, wild, meat and skin, raw",Poultry Products,66.52,211,17.42,15.20,0.00,0.0,,1.16,56,249
05145,"Duck, wild, breast, meat only, raw",Poultry Products,75.51,123,19.85,4.25,0.00,0.0,,1.33,57,268
05146,"Goose, domesticated, meat and skin, raw",Poultry Products,49.66,371,15.86,33.62,0.00,0.0,,0.87,73,308
05147,"Goose, domesticated, meat and skin, cooked, roasted",Poultry Products,51.95,305,25.16,21.92,0.00,0.0,0.00,0.97,70,329
05148,"Goose, domesticated, meat only, raw",Poultry Products,68.30,161,22.75,7.13,0.00,0.0,,1.10,87,420
05149,"Goose, domesticated, meat only, cooked, roasted",Poultry Products,57.23,238,28.97,12.67,0.00,0.0,,1.14,76,388
05150,"Goose, liver, raw",Poultry Products,71.78,133,16.37,4.28,6.32,0.0,,1.25,140,230
05151,"Guinea hen, meat and skin, raw",Poultry Products,68.90,158,23.40,6.45,0.00,0.0,,1.25,67,193
05152,"Guinea hen, meat only, raw",Poultry Products,74.44,110,20.64,2.47,0.00,0.0,,1.25,69,220
05153,"Pheasant, raw, meat and skin",Poultry Products,67.77,181,22.70,9.29,0.00,0.0,,1.27,40,243
05154,"Pheasant, raw, meat only",Poultry Products,72.77,133,23.57,3.64,0.00,0.0,,1.35,37,262
05155,"Pheasant, breast, meat only, raw",Poultry Products,72.40,133,24.37,3.25,0.00,0.0,,1.30,33,242
05156,"Pheasant, leg, meat only, raw",Poultry Products,73.40,134,22.20,4.30,0.00,0.0,,1.44,45,296
05157,"Quail, meat and skin, raw",Poultry Products,69.65,192,19.63,12.05,0.00,0.0,,0.90,53,216
05158,"Quail, meat only, raw",Poultry Products,70.03,134,21.76,4.53,0.00,0.0,,1.32,51,237
05159,"Quail, breast, meat only, raw",Poultry Products,71.67,123,22.59,2.99,0.00,0.0,,1.27,55,260
05160,"Squab, (pigeon), meat and skin, raw",Poultry Products,56.60,294,18.47,23.80,0.00,0.0,,1.40,54,199
05161,"Squab, (pigeon), meat only, raw",Poultry Products,72.80,142,17.50,7.50,0.00,0.0,,1.17,51,237
05162,"Squab, (pigeon), light meat without skin, raw",Poultry Products,72.82,134,21.76,4.52,0.00,0.0,,1.28,55,260
05165,"Turkey, whole, meat and skin, raw",Poultry Products,72.69,143,21.64,5.64,0.00,0.0,0.06,0.98,112,224
05166,"Turkey, whole, meat and skin, cooked, roasted",Poultry Products,63.52,189,28.55,7.39,0.06,0.0,0.00,1.18,103,239
05167,"Turkey, whole, meat only, raw",Poultry Products,75.37,112,22.64,1.93,0.00,0.0,0.07,1.04,118,235
05168,"Turkey, whole, meat only, cooked, roasted",Poultry Products,66.70,159,29.06,3.84,0.00,0.0,0.00,1.17,101,239
05169,"Turkey, skin from whole, (light and dark), raw",Poultry Products,48.38,407,12.96,38.93,0.00,0.0,0.00,0.52,62,124
05170,"Turkey, skin from whole (light and dark), roasted",Poultry Products,34.91,459,23.94,39.31,0.57,0.0,0.00,1.27,116,242
05173,"Turkey, gizzard, all classes, raw",Poultry Products,77.47,111,18.80,3.37,0.00,0.0,0.00,0.93,147,185
05174,"Turkey, gizzard, all classes, cooked, simmered",Poultry Products,69.22,155,26.45,4.64,0.00,0.0,0.00,0.86,127,193
05175,"Turkey, heart, all classes, raw",Poultry Products,74.47,140,16.70,7.44,0.40,0.0,0.00,0.99,129,179
05176,"Turkey, heart, all classes, cooked, simmered",Poultry Products,67.15,174,24.88,7.52,0.00,0.0,0.00,1.21,140,203
05177,"Turkey, liver, all classes, raw",Poultry Products,75.54,128,18.26,5.50,0.00,0.0,0.00,1.32,131,214
05178,"Turkey, liver, all classes, cooked, simmered",Poultry Products,63.99,189,27.00,8.18,0.00,0.0,0.00,1.47,98,153
05181,"Turkey from whole, light meat, meat and skin, raw",Poultry Products,70.68,161,21.96,7.43,0.00,0.0,0.04,0.96,105,223
05182,"Turkey from whole, light meat, meat and skin, cooked, roasted",Poultry Products,64.79,177,29.55,5.57,0.05,0.0,0.00,1.22,101,248
05183,"Turkey, dark meat, meat and skin, raw",Poultry Products,71.10,161,19.81,8.97,0.00,0.0,0.08,0.94,113,208
05184,"Turkey, dark meat from whole, meat and skin, cooked, roasted",Poultry Products,61.66,206,27.27,9.95,0.07,0.0,0.00,1.14,105,228
05185,"Turkey from whole, light meat, raw",Poultry Products,74.89,114,23.66,1.48,0.00,0.0,0.05,1.04,113,242
05186,"Turkey, all classes, light meat, cooked, roasted",Poultry Products,67.88,147,30.13,2.08,0.00,0.0,0.00,1.22,99,249
05187,"Turkey from whole, dark meat, meat only, raw",Poultry Products,76.01,108,21.28,2.50,0.00,0.0,0.10,1.03,124,226
05188,"Turkey, from whole, dark meat, cooked, roasted",Poultry Products,65.23,173,27.71,6.04,0.00,0.0,0.00,1.12,104,227
05191,"Turkey, all classes, breast, meat and skin, raw",Poultry Products,70.05,157,21.89,7.02,0.00,0.0,,0.91,59,275
05192,"Turkey, all classes, breast, meat and skin, cooked, roasted",Poultry Products,63.22,189,28.71,7.41,0.00,0.0,,1.03,63,288
05193,"Turkey, all classes, leg, meat and skin, raw",Poultry Products,72.69,144,19.54,6.72,0.00,0.0,,0.89,74,273
05194,"Turkey, all classes, leg, meat and skin, cooked, roasted",Poultry Products,61.19,208,27.87,9.82,0.00,0.0,0.00,0.99,77,280
05195,"Turkey, all classes, wing, meat and skin, raw",Poultry Products,66.49,197,20.22,12.32,0.00,0.0,,0.81,55,240
05196,"Turkey, all classes, wing, meat and skin, cooked, roasted",Poultry Products,59.49,229,27.38,12.43,0.00,0.0,0.00,0.97,61,266
05219,"Turkey, breast, from whole bird, non-enhanced, meat only, raw",Poultry Products,74.89,114,23.66,1.48,0.00,0.0,0.05,1.04,113,242
05220,"Turkey, breast, from whole bird, non-enhanced, meat only, roasted",Poultry Products,67.88,147,30.13,2.08,0.00,0.0,0.00,1.22,99,249
05227,"Turkey, wing, from whole bird, non-enhanced, meat only, raw",Poultry Products,74.89,114,23.66,1.48,0.00,0.0,0.05,1.04,113,242
05228,"Turkey, wing, from whole bird, non-enhanced, meat only, roasted",Poultry Products,67.88,147,30.13,2.08,0.00,0.0,0.00,1.22,99,249
05236,"Turkey, young hen, skin only, cooked, roasted",Poultry Products,35.53,482,19.03,44.45,0.00,0.0,,0.63,44,155
05277,"Chicken, canned, meat only, with broth",Poultry Products,68.65,165,21.77,7.95,0.00,0.0,0.00,1.81,503,138
05282,"Pate de foie gras, canned (goose liver pate), smoked",Poultry Products,37.04,462,11.40,43.84,4.67,0.0,,3.05,697,138
05284,"Turkey, canned, meat only, with broth",Poultry Products,66.07,169,23.68,6.86,1.47,0.0,0.00,1.92,518,224
05285,"Turkey, diced, light and dark meat, seasoned",Poultry Products,71.70,138,18.70,6.00,1.00,0.0,,2.60,850,310
05286,"Turkey and gravy, frozen",Poultry Products,85.07,67,5.88,2.63,4.61,0.0,,1.81,554,61
05292,"Turkey patties, breaded, battered, fried",Poultry Products,49.70,283,14.00,18.00,15.70,0.5,0.32,2.60,800,275
05293,"Turkey breast, pre-basted, meat and skin, cooked, roasted",Poultry Products,70.91,126,22.16,3.46,0.00,0.0,,2.06,397,248
05294,"Turkey thigh, pre-basted, meat and skin, cooked, roasted",Poultry Products,70.60,157,18.80,8.54,0.00,0.0,,2.06,437,241
05295,"Turkey roast, boneless, frozen, seasoned, light and dark meat, raw",Poultry Products,70.40,120,17.60,2.20,6.40,0.0,,3.40,678,360
05296,"Turkey roast, boneless, frozen, seasoned, light and dark meat, roasted",Poultry Products,67.84,155,21.32,5.78,3.07,0.0,0.00,1.99,680,298
05300,"Turkey sticks, breaded, battered, fried",Poultry Products,49.40,279,14.20,16.90,17.00,,,2.50,838,260
05305,"Poultry food products, ground turkey, raw",Poultry Products,72.36,148,19.66,7.66,0.00,0.0,0.00,1.00,58,237
05306,"Poultry food products, ground turkey, cooked",Poultry Products,62.07,203,27.37,10.40,0.00,0.0,0.00,1.26,78,294
05307,"Chicken, cornish game hens, meat and skin, raw",Poultry Products,68.18,200,17.15,14.02,0.00,0.0,0.00,0.80,61,236
05308,"Chicken, cornish game hens, meat and skin, cooked, roasted",Poultry Products,58.68,259,22.27,18.21,0.00,0.0,0.00,1.04,64,245
05309,"Chicken, cornish game hens, meat only, raw",Poultry Products,75.84,116,20.04,3.33,0.00,0.0,0.00,0.90,68,269
05310,"Chicken, cornish game hens, meat only, cooked, roasted",Poultry Products,71.90,134,23.30,3.87,0.00,0.0,0.00,1.04,63,250
05311,"Chicken, canned, no broth",Poultry Products,64.90,185,25.30,8.10,0.90,0.0,0.00,0.80,482,153
05312,"Chicken, wing, frozen, glazed, barbecue flavored",Poultry Products,61.79,211,19.67,12.67,3.34,0.6,2.04,2.53,615,190
05313,"Chicken, wing, frozen, glazed, barbecue flavored, heated (microwave)",Poultry Products,53.89,248,25.34,13.90,3.84,0.9,2.10,3.04,837,254
05315,"Duck, young duckling, domesticated, White Pekin, breast, meat and skin, boneless, cooked, roasted",Poultry Products,63.25,202,24.50,10.85,0.00,,,1.15,84,
05316,"Duck, young duckling, domesticated, White Pekin, breast, meat only, boneless, cooked without skin, broiled",Poultry Products,68.25,140,27.60,2.50,0.00,,,1.40,105,
05317,"Duck, young duckling, domesticated, White Pekin, leg, meat and skin, bone in, cooked, roasted",Poultry Products,60.90,217,26.75,11.40,0.00,,,1.00,110,
05318,"Duck, young duckling, domesticated, White Pekin, leg, meat only, bone in, cooked without skin, braised",Poultry Products,64.60,178,29.10,5.96,0.00,,,1.10,108,
05320,"Chicken, wing, frozen, glazed, barbecue flavored, heated (conventional oven)",Poultry Products,57.25,242,22.24,14.87,3.36,0.5,1.94,2.28,559,218
05323,"Chicken patty, frozen, uncooked",Poultry Products,50.04,292,14.33,20.04,13.61,1.2,0.00,1.98,518,248
05324,"Chicken patty, frozen, cooked",Poultry Products,50.82,287,14.85,19.58,12.84,0.3,0.00,1.92,532,261
05326,"Chicken breast tenders, breaded, cooked, microwaved",Poultry Products,51.34,252,16.35,12.89,17.56,0.0,0.00,1.87,446,225
05332,"Chicken, ground, raw",Poultry Products,73.24,143,17.44,8.10,0.04,0.0,0.00,1.17,60,522
05333,"Chicken, ground, crumbles, cooked, pan-browned",Poultry Products,64.92,189,23.28,10.92,0.00,0.0,0.00,1.57,75,677
05335,"Chicken, feet, boiled",Poultry Products,65.80,215,19.40,14.60,0.20,0.0,0.00,0.00,67,31
05342,"Chicken, broilers or fryers, breast, meat only, cooked, rotisserie, original seasoning",Poultry Products,66.67,148,29.07,3.49,0.00,0.0,0.00,1.72,341,296
05343,"Chicken, broilers or fryers, drumstick, meat only, cooked, rotisserie, original seasoning",Poultry Products,63.05,176,28.74,6.81,0.00,0.0,0.00,1.91,417,301
05344,"Chicken, broilers or fryers, skin only, cooked, rotisserie, original seasoning",Poultry Products,43.76,406,17.66,37.24,0.00,0.0,0.11,1.70,381,245
05345,"Chicken, broilers or fryers, thigh, meat only, cooked, rotisserie, original seasoning",Poultry Products,63.89,196,24.06,11.09,0.00,0.0,0.00,1.56,337,264
05346,"Chicken, broilers or fryers, wing, meat only, cooked, rotisserie, original seasoning",Poultry Products,61.13,197,27.69,9.53,0.00,0.0,0.00,2.65,725,322
05348,"Chicken, broilers or fryers, breast, meat and skin, cooked, rotisserie, original seasoning",Poultry Products,63.49,184,27.48,8.18,0.00,0.0,0.02,1.72,347,289
05349,"Chicken, broilers or fryers, drumstick, meat and skin, cooked, rotisserie, original seasoning",Poultry Products,59.78,215,26.86,11.98,0.00,0.0,0.02,1.87,411,291
05351,"Chicken, broilers or fryers, thigh, meat and skin, cooked, rotisserie, original seasoning",Poultry Products,60.34,233,22.93,15.70,0.00,0.0,0.02,1.58,345,260
05352,"Chicken, broilers or fryers, wing, meat and skin, cooked, rotisserie, original seasoning",Poultry Products,55.34,266,24.34,18.77,0.00,0.0,0.04,2.33,610,296
05621,"Emu, ground, raw",Poultry Products,72.87,134,22.77,4.03,0.00,0.0,0.00,1.00,56,320
05622,"Emu, ground, cooked, pan-broiled",Poultry Products,65.83,163,28.43,4.65,0.00,0.0,0.00,1.17,65,375
05623,"Emu, fan fillet, raw",Poultry Products,74.62,103,22.50,0.80,0.00,0.0,0.00,1.10,120,300
05624,"Emu, fan fillet, cooked, broiled",Poultry Products,66.43,154,31.27,2.30,0.00,0.0,0.00,1.30,53,397
05625,"Emu, flat fillet, raw",Poultry Products,75.40,102,22.25,0.74,0.00,0.0,0.00,0.93,150,240
05626,"Emu, full rump, raw",Poultry Products,73.79,112,22.83,1.64,0.00,0.0,0.00,1.14,90,330
05627,"Emu, full rump, cooked, broiled",Poultry Products,61.97,168,33.67,2.68,0.00,0.0,0.00,1.35,110,324
05628,"Emu, inside drum, raw",Poultry Products,74.73,108,22.22,1.49,0.00,0.0,0.00,1.15,102,318
05629,"Emu, inside drums, cooked, broiled",Poultry Products,64.31,156,32.38,2.01,0.00,0.0,0.00,1.30,118,312
05630,"Emu, outside drum, raw",Poultry Products,74.87,103,23.08,0.48,0.00,0.0,0.00,1.00,100,320
05631,"Emu, oyster, raw",Poultry Products,72.57,141,22.81,4.86,0.00,0.0,0.00,0.95,150,250
05632,"Emu, top loin, cooked, broiled",Poultry Products,67.37,152,29.07,3.13,0.00,0.0,0.00,1.27,58,374
05641,"Ostrich, ground, raw",Poultry Products,71.07,165,20.22,8.70,0.00,0.0,0.00,0.73,72,291
05642,"Ostrich, ground, cooked, pan-broiled",Poultry Products,67.12,175,26.15,7.07,0.00,0.0,0.00,0.83,80,323
05643,"Ostrich, fan, raw",Poultry Products,75.93,117,21.81,2.65,0.00,0.0,0.00,0.61,75,308
05644,"Ostrich, inside leg, raw",Poultry Products,75.97,111,22.39,1.72,0.00,0.0,0.00,0.61,72,320
05645,"Ostrich, inside leg, cooked",Poultry Products,69.95,141,29.01,1.94,0.00,0.0,0.00,0.76,83,352
05646,"Ostrich, inside strip, raw",Poultry Products,74.16,127,23.69,2.87,0.00,0.0,0.00,1.22,76,330
05647,"Ostrich, inside strip, cooked",Poultry Products,66.53,164,29.37,4.26,0.00,0.0,0.00,0.85,73,366
05648,"Ostrich, outside leg, raw",Poultry Products,75.59,115,22.86,1.96,0.00,0.0,0.00,0.62,90,322
05649,"Ostrich, outside strip, raw",Poultry Products,74.58,120,23.36,2.21,0.00,0.0,0.00,1.13,70,333
05650,"Ostrich, outside strip, cooked",Poultry Products,66.88,156,28.55,3.83,0.00,0.0,0.00,0.83,72,367
05651,"Ostrich, oyster, raw",Poultry Products,75.62,125,21.55,3.67,0.00,0.0,0.00,0.62,83,297
05652,"Ostrich, oyster, cooked",Poultry Products,67.55,159,28.81,3.97,0.00,0.0,0.00,0.82,81,409
05653,"Ostrich, round, raw",Poultry Products,75.68,116,21.99,2.40,0.00,0.0,0.00,0.62,72,315
05654,"Ostrich, tenderloin, raw",Poultry Products,74.50,123,22.07,3.19,0.00,0.0,0.00,0.73,86,320
05655,"Ostrich, tip trimmed, raw",Poultry Products,76.12,114,21.85,2.30,0.00,0.0,0.00,0.61,67,310
05656,"Ostrich, tip trimmed, cooked",Poultry Products,68.51,145,28.49,2.57,0.00,0.0,0.00,0.83,80,362
05657,"Ostrich, top loin, raw",Poultry Products,75.35,119,21.67,2.95,0.00,0.0,0.00,0.73,81,312
05658,"Ostrich, top loin, cooked",Poultry Products,67.95,155,28.12,3.87,0.00,0.0,0.00,0.83,77,353
05661,"Chicken, liver, all classes, cooked, pan-fried",Poultry Products,65.22,172,25.78,6.43,1.11,0.0,0.00,1.47,92,315
05662,"Ground Turkey, fat free, raw",Poultry Products,74.66,112,23.57,1.95,0.00,0.0,0.00,1.15,51,295
05663,"Ground turkey, fat free, pan-broiled crumbles",Poultry Products,65.76,151,31.69,2.71,0.00,0.0,0.00,1.42,61,357
05664,"Ground turkey, fat free, patties, broiled",Poultry Products,68.40,138,28.99,2.48,0.00,0.0,0.00,1.29,59,339
05665,"Ground turkey, 93% lean, 7% fat, raw",Poultry Products,72.63,150,18.73,8.34,0.00,0.0,0.00,0.92,69,213
05666,"Ground turkey, 93% lean, 7% fat, pan-broiled crumbles",Poultry Products,61.05,213,27.10,11.60,0.00,0.0,0.00,1.27,90,304
05667,"Ground turkey, 93% lean, 7% fat, patties, broiled",Poultry Products,62.42,207,25.86,11.45,0.00,0.0,0.00,1.07,91,247
05668,"Ground turkey, 85% lean, 15% fat, raw",Poultry Products,69.74,180,16.90,12.54,0.00,0.0,0.00,0.96,54,202
05669,"Ground turkey, 85% lean, 15% fat, pan-broiled crumbles",Poultry Products,56.66,258,25.11,17.45,0.00,0.0,0.00,1.32,85,276
05670,"Ground turkey, 85% lean, 15% fat, patties, broiled",Poultry Products,58.25,249,25.88,16.20,0.00,0.0,0.00,1.20,81,242
05671,"Chicken, broilers or fryers, dark meat, drumstick, meat only, cooked, braised",Poultry Products,69.94,149,23.93,5.95,0.00,0.0,0.00,0.98,117,239
05672,"Chicken, broilers or fryers, dark meat, thigh, meat only, cooked, braised",Poultry Products,66.87,176,24.55,8.63,0.00,0.0,0.00,0.99,77,266
05673,"Chicken, skin (drumsticks and thighs), cooked, braised",Poultry Products,42.09,443,14.61,42.76,0.00,0.0,0.00,0.63,75,161
05674,"Chicken, skin (drumsticks and thighs), raw",Poultry Products,44.91,440,9.58,44.23,0.79,0.0,0.00,0.49,51,119
05675,"Chicken, skin (drumsticks and thighs), cooked, roasted",Poultry Products,39.45,462,16.57,43.99,0.00,0.0,0.00,0.72,85,181
05676,"Chicken, broilers or fryers, dark meat, drumstick, meat and skin, cooked, braised",Poultry Products,66.33,187,22.72,10.73,0.00,0.0,0.00,0.93,111,229
05677,"Chicken, broilers or fryers, dark meat, thigh, meat and skin, cooked, braised",Poultry Products,61.93,229,22.57,15.43,0.00,0.0,0.00,0.91,76,245
05710,"Turkey, retail parts, breast, meat only, raw",Poultry Products,74.66,114,23.34,2.33,0.00,0.0,0.00,1.06,74,267
05711,"Turkey, retail parts, breast, meat only, cooked, roasted",Poultry Products,67.53,136,29.51,1.97,0.00,0.0,0.00,1.25,114,297
05712,"Turkey, retail parts, wing, meat only, raw",Poultry Products,75.05,112,22.48,2.49,0.00,0.0,0.00,0.94,69,222
05713,"Turkey, retail parts, wing, meat only, cooked, roasted",Poultry Products,64.04,170,30.17,5.51,0.00,0.0,0.00,1.05,103,207
05714,"Turkey, skin, from retail parts, from dark meat, raw",Poultry Products,50.08,380,14.35,35.83,0.00,0.0,0.00,0.49,78,93
05715,"Turkey, skin, from retail parts, from dark meat, cooked, roasted",Poultry Products,39.42,414,24.58,35.03,0.00,0.0,0.00,1.15,106,225
05716,"Turkey, retail parts, drumstick, meat only, raw",Poultry Products,75.67,118,20.52,3.97,0.00,0.0,0.00,0.91,87,220
05717,"Turkey, retail parts, thigh, meat only, raw",Poultry Products,75.62,116,20.60,3.69,0.00,0.0,0.00,1.03,75,269
05722,"Turkey, retail parts, thigh, meat only, cooked, roasted",Poultry Products,66.98,159,25.14,6.25,0.46,0.0,0.00,1.18,104,296
05723,"Turkey, retail parts, drumstick, meat only, cooked, roasted",Poultry Products,65.14,173,28.61,6.52,0.00,0.0,0.00,1.06,112,257
05732,"Turkey, retail parts, breast, meat and skin, raw",Poultry Products,70.98,155,21.88,7.45,0.00,0.0,0.00,0.98,72,247
05733,"Turkey, retail parts, breast, meat and skin, cooked, roasted",Poultry Products,64.59,164,29.01,5.33,0.05,0.0,0.00,1.25,114,292
05734,"Turkey, retail parts, wing, meat and skin, raw",Poultry Products,66.78,202,19.53,13.79,0.00,0.0,0.00,0.81,67,192
05735,"Turkey, retail parts, wing, meat and skin, cooked, roasted",Poultry Products,57.34,235,28.74,13.29,0.13,0.0,0.00,1.10,106,215
05736,"Turkey, retail parts, drumstick, meat and skin, raw",Poultry Products,73.37,141,19.96,6.84,0.00,0.0,0.00,0.88,86,208
05737,"Turkey, retail parts, drumstick, meat and skin, cooked, roasted",Poultry Products,62.57,197,28.21,9.37,0.00,0.0,0.00,1.07,112,254
05738,"Turkey, drumstick, from whole bird, meat only, raw",Poultry Products,74.89,108,23.66,1.48,0.00,0.0,0.05,1.04,113,242
05739,"Turkey, drumstick, from whole bird, meat only, roasted",Poultry Products,67.88,139,30.13,2.08,0.00,0.0,0.00,1.22,99,249
05740,"Turkey, thigh, from whole bird, meat only, raw",Poultry Products,76.01,108,21.28,2.50,0.00,0.0,0.10,1.03,124,226
05741,"Turkey, thigh, from whole bird, meat only, roasted",Poultry Products,65.23,165,27.71,6.04,0.00,0.0,0.00,1.12,104,227
05742,"Turkey, retail parts, thigh, meat and skin, raw",Poultry Products,71.28,161,19.54,9.16,0.00,0.0,0.00,0.94,75,239
05743,"Turkey, retail parts, thigh, meat and skin, cooked, roasted",Poultry Products,65.12,183,23.95,9.50,0.41,0.0,0.00,1.10,101,273
05746,"Chicken, broiler or fryers, breast, skinless, boneless, meat only, cooked, braised",Poultry Products,65.32,157,32.06,3.24,0.00,0.0,0.00,1.19,47,343
05747,"Chicken, broiler or fryers, breast, skinless, boneless, meat only, cooked, grilled",Poultry Products,66.14,151,30.54,3.17,0.00,0.0,0.00,1.33,52,391
07001,"Barbecue loaf, pork, beef",Sausages and Luncheon Meats,64.82,173,15.84,8.90,6.40,0.0,,4.04,1334,329
07002,"Beerwurst, beer salami, pork and beef",Sausages and Luncheon Meats,56.71,277,14.00,22.53,3.76,0.9,0.00,2.50,881,244
07003,"Beerwurst, beer salami, pork",Sausages and Luncheon Meats,61.46,238,14.24,18.80,2.06,0.0,,3.44,1240,253
07004,"Sausage, Berliner, pork, beef",Sausages and Luncheon Meats,60.97,230,15.27,17.20,2.59,0.0,2.35,3.97,1297,283
07005,Blood sausage,Sausages and Luncheon Meats,47.30,379,14.60,34.50,1.29,0.0,1.29,2.31,680,38
07006,"Bockwurst, pork, veal, raw",Sausages and Luncheon Meats,54.47,301,14.03,25.87,2.95,1.0,1.33,2.26,756,270
07007,"Bologna, beef",Sausages and Luncheon Meats,55.31,299,10.91,26.13,4.29,0.0,2.05,3.37,1013,351
07008,"Bologna, beef and pork",Sausages and Luncheon Meats,51.87,308,15.20,24.59,5.49,0.0,4.42,2.85,960,315
07010,"Bologna, pork",Sausages and Luncheon Meats,60.60,247,15.30,19.87,0.73,0.0,0.00,3.50,907,281
07011,"Bologna, turkey",Sausages and Luncheon Meats,64.55,209,11.42,16.05,4.68,0.5,2.90,3.30,1071,135
07013,"Bratwurst, pork, cooked",Sausages and Luncheon Meats,51.45,333,13.72,29.18,2.85,0.0,0.00,2.80,846,348
07014,"Braunschweiger (a liver sausage), pork",Sausages and Luncheon Meats,50.60,327,14.50,28.50,3.10,0.0,0.00,3.30,977,199
07015,"Brotwurst, pork, beef, link",Sausages and Luncheon Meats,51.30,323,14.30,27.80,2.93,0.0,2.98,3.67,1112,281
07016,"Cheesefurter, cheese smokie, pork, beef",Sausages and Luncheon Meats,52.50,328,14.10,29.00,1.37,0.0,1.51,3.03,1082,206
07017,"Chicken roll, light meat",Sausages and Luncheon Meats,72.41,110,16.64,2.73,4.66,0.0,0.57,3.55,1059,439
07018,Chicken spread,Sausages and Luncheon Meats,57.41,158,18.01,17.56,4.05,0.3,0.47,2.97,722,106
07019,"Chorizo, pork and beef",Sausages and Luncheon Meats,31.85,455,24.10,38.27,1.86,0.0,0.00,3.92,1235,398
07020,"Corned beef loaf, jellied",Sausages and Luncheon Meats,69.10,153,22.90,6.10,0.00,0.0,,3.00,953,101
07021,"Dutch brand loaf, chicken, pork and beef",Sausages and Luncheon Meats,58.10,273,12.00,22.91,3.93,0.3,0.90,3.07,786,210
07022,"Frankfurter, beef, unheated",Sausages and Luncheon Meats,53.94,316,11.16,28.30,3.36,0.0,1.31,3.24,992,316
07023,"Frankfurter, beef and pork",Sausages and Luncheon Meats,55.96,305,11.53,27.64,1.72,0.0,0.00,3.15,819,167
07024,"Frankfurter, chicken",Sausages and Luncheon Meats,62.50,223,15.51,16.19,2.74,0.4,0.53,3.06,756,202
07025,"Frankfurter, turkey",Sausages and Luncheon Meats,62.99,223,12.23,17.29,3.81,0.0,1.21,3.68,911,392
07026,"Ham, chopped, canned",Sausages and Luncheon Meats,60.77,239,16.06,18.83,0.26,0.0,0.00,4.08,1280,284
07027,"Ham, chopped, not canned",Sausages and Luncheon Meats,65.30,180,16.50,10.30,4.20,0.0,0.00,3.70,1039,319
07029,"Ham, sliced, regular (approximately 11% fat)",Sausages and Luncheon Meats,67.27,163,16.60,8.60,3.83,1.3,0.00,3.70,1143,287
07030,"Ham, minced",Sausages and Luncheon Meats,57.35,263,16.28,20.68,1.84,0.0,0.00,3.85,1245,311
07031,Ham salad spread,Sausages and Luncheon Meats,62.60,216,8.68,15.53,10.64,0.0,0.00,2.55,1075,150
07032,Ham and cheese loaf or roll,Sausages and Luncheon Meats,60.30,241,13.60,18.70,4.00,0.0,0.00,3.40,1000,294
07033,Ham and cheese spread,Sausages and Luncheon Meats,59.13,245,16.18,18.53,2.28,0.0,,3.90,1197,162
07034,"Headcheese, pork",Sausages and Luncheon Meats,73.84,157,13.83,10.90,0.00,0.0,0.00,2.08,941,31
07036,"Sausage, Italian, pork, raw",Sausages and Luncheon Meats,51.08,346,14.25,31.33,0.65,0.0,,2.70,731,253
07037,"Kielbasa, kolbassy, pork, beef, nonfat dry milk added",Sausages and Luncheon Meats,54.58,309,12.23,27.29,2.81,0.0,1.60,3.09,667,300
07038,"Knackwurst, knockwurst, pork, beef",Sausages and Luncheon Meats,55.30,307,11.10,27.70,3.20,0.0,0.00,2.70,930,199
07039,"Lebanon bologna, beef",Sausages and Luncheon Meats,65.77,172,19.03,10.44,0.44,0.0,0.00,4.32,1374,330
07040,"Liver cheese, pork",Sausages and Luncheon Meats,53.60,304,15.20,25.60,2.10,0.0,,3.50,1225,226
07041,"Liver sausage, liverwurst, pork",Sausages and Luncheon Meats,52.10,326,14.10,28.50,2.20,0.0,,3.10,860,170
07042,"Luncheon meat, beef, loaved",Sausages and Luncheon Meats,52.50,308,14.40,26.20,2.90,0.0,0.00,4.00,1125,208
07043,"Luncheon meat, beef, thin sliced",Sausages and Luncheon Meats,72.53,117,17.94,3.40,2.59,0.0,0.00,3.54,883,308
07045,"Luncheon meat, pork, canned",Sausages and Luncheon Meats,51.50,334,12.50,30.30,2.10,0.0,0.00,3.60,1289,215
07046,"Turkey breast, low salt, prepackaged or deli, luncheon meat",Sausages and Luncheon Meats,74.07,116,22.81,0.88,4.21,0.5,3.51,2.99,772,211
07050,"Mortadella, beef, pork",Sausages and Luncheon Meats,52.30,311,16.37,25.39,3.05,0.0,0.00,2.89,1246,163
07051,"Olive loaf, pork",Sausages and Luncheon Meats,58.20,235,11.80,16.50,9.20,0.0,0.00,4.30,964,297
07052,"Pastrami, turkey",Sausages and Luncheon Meats,71.73,139,16.30,6.21,3.34,0.1,3.34,3.98,1123,345
07053,"Pate, chicken liver, canned",Sausages and Luncheon Meats,65.64,201,13.45,13.10,6.55,0.0,0.00,1.26,386,95
07054,"Pate, goose liver, smoked, canned",Sausages and Luncheon Meats,37.04,462,11.40,43.84,4.67,0.0,,3.05,697,138
07055,"Pate, liver, not specified, canned",Sausages and Luncheon Meats,53.90,319,14.20,28.00,1.50,0.0,,2.20,697,138
07056,"Peppered loaf, pork, beef",Sausages and Luncheon Meats,67.40,149,17.30,6.37,4.53,0.0,4.61,4.40,732,394
07057,"Pepperoni, pork, beef",Sausages and Luncheon Meats,30.72,494,22.68,43.98,0.00,0.0,0.00,5.34,1761,279
07058,"Pickle and pimiento loaf, pork",Sausages and Luncheon Meats,60.29,225,11.23,15.95,8.46,1.5,8.46,4.07,1040,371
07059,"Polish sausage, pork",Sausages and Luncheon Meats,53.15,326,14.10,28.72,1.63,0.0,,2.40,876,237
07060,"Luxury loaf, pork",Sausages and Luncheon Meats,68.20,141,18.40,4.80,4.90,0.0,,3.60,1225,377
07062,"Picnic loaf, pork, beef",Sausages and Luncheon Meats,60.20,232,14.92,16.64,4.76,0.0,,3.48,1164,267
07063,"Pork sausage, link/patty, unprepared",Sausages and Luncheon Meats,56.58,287,15.37,24.78,0.72,0.0,0.93,2.54,740,307
07064,"Pork sausage, link/patty, cooked, pan-fried",Sausages and Luncheon Meats,49.89,325,18.53,27.25,1.42,0.0,1.09,2.90,814,342
07065,"Pork and beef sausage, fresh, cooked",Sausages and Luncheon Meats,44.55,396,13.80,36.25,2.70,0.0,0.00,2.70,929,189
07067,Poultry salad sandwich spread,Sausages and Luncheon Meats,66.17,200,11.64,13.52,7.41,0.0,0.00,1.26,653,183
07068,"Salami, cooked, beef",Sausages and Luncheon Meats,60.00,261,12.60,22.20,1.90,0.0,1.50,3.30,1140,188
07069,"Salami, cooked, beef and pork",Sausages and Luncheon Meats,45.19,336,21.85,25.90,2.40,0.0,0.96,4.66,1740,316
07070,"Salami, cooked, turkey",Sausages and Luncheon Meats,68.93,172,19.30,9.21,1.55,0.1,1.12,1.79,1107,216
07071,"Salami, dry or hard, pork",Sausages and Luncheon Meats,36.18,407,22.58,33.72,1.60,0.0,,5.92,2260,378
07072,"Salami, dry or hard, pork, beef",Sausages and Luncheon Meats,41.44,378,20.88,31.81,0.60,0.0,0.24,5.27,1737,347
07073,"Sandwich spread, pork, beef",Sausages and Luncheon Meats,60.28,235,7.66,17.34,11.94,0.2,0.00,2.78,1013,110
07074,"Smoked link sausage, pork",Sausages and Luncheon Meats,56.49,309,11.98,28.23,0.94,0.0,0.94,3.11,827,483
07075,"Sausage, smoked link sausage, pork and beef",Sausages and Luncheon Meats,53.97,320,12.00,28.73,2.42,0.0,0.00,2.89,911,179
07076,"Smoked link sausage, pork and beef, flour and nonfat dry milk added",Sausages and Luncheon Meats,57.40,268,13.97,21.43,3.96,0.0,3.00,3.24,1272,155
07077,"Smoked link sausage, pork and beef, nonfat dry milk added",Sausages and Luncheon Meats,53.91,313,13.28,27.61,1.92,0.0,,3.29,1173,286
07078,"Thuringer, cervelat, summer sausage, beef, pork",Sausages and Luncheon Meats,45.18,362,17.45,30.43,3.33,0.0,0.85,3.63,1300,260
07079,"Turkey breast, sliced, oven roasted, luncheon meat",Sausages and Luncheon Meats,74.07,104,17.07,1.66,4.21,0.5,3.51,2.99,928,302
07080,"Turkey ham, cured turkey thigh meat",Sausages and Luncheon Meats,71.92,126,17.50,4.84,2.04,0.2,1.43,3.70,1243,287
07081,"Turkey breast, sliced, prepackaged",Sausages and Luncheon Meats,75.74,100,16.45,2.25,3.28,0.0,3.28,3.21,941,419
07082,"Turkey roll, light and dark meat",Sausages and Luncheon Meats,70.15,149,18.14,6.99,2.12,0.0,0.00,2.60,477,270
07083,"Sausage, Vienna, canned, chicken, beef, pork",Sausages and Luncheon Meats,64.90,230,10.50,19.40,2.60,0.0,0.00,2.60,879,101
07088,"Honey roll sausage, beef",Sausages and Luncheon Meats,64.78,182,18.58,10.50,2.18,0.0,,3.98,1322,291
07089,"Sausage, Italian, pork, cooked",Sausages and Luncheon Meats,47.13,344,19.12,27.31,4.27,0.1,0.86,2.18,1207,304
07090,"Luncheon sausage, pork and beef",Sausages and Luncheon Meats,58.62,260,15.38,20.90,1.58,0.0,,3.52,1182,245
07091,"New england brand sausage, pork, beef",Sausages and Luncheon Meats,66.77,161,17.27,7.58,4.83,0.0,,3.55,1220,321
07910,"Bratwurst, veal, cooked",Sausages and Luncheon Meats,53.51,341,13.99,31.70,0.00,0.0,0.00,0.80,60,231
07911,Liverwurst spread,Sausages and Luncheon Meats,53.53,305,12.38,25.45,5.89,2.5,1.65,2.75,700,170
07912,Roast beef spread,Sausages and Luncheon Meats,61.70,223,15.27,16.28,3.73,0.2,0.71,3.02,724,259
07914,"Sausage, Italian, sweet, links",Sausages and Luncheon Meats,71.60,149,16.13,8.42,2.10,0.0,0.00,1.75,570,194
07915,"Sausage, Polish, beef with chicken, hot",Sausages and Luncheon Meats,55.20,259,17.60,19.40,3.60,0.0,0.00,4.20,1540,237
07916,"Sausage, Polish, pork and beef, smoked",Sausages and Luncheon Meats,56.58,301,12.07,26.56,1.98,0.0,0.00,2.81,848,189
07917,"Sausage, pork and beef, with cheddar cheese, smoked",Sausages and Luncheon Meats,56.11,296,12.89,25.84,2.13,0.0,0.11,3.03,848,206
07918,"Sausage, summer, pork and beef, sticks, with cheddar cheese",Sausages and Luncheon Meats,36.20,426,19.43,37.91,1.82,0.2,0.12,4.83,1483,206
07919,"Sausage, turkey, breakfast links, mild",Sausages and Luncheon Meats,63.12,235,15.42,18.09,1.56,0.0,0.00,1.81,639,229
07920,"Swisswurst, pork and beef, with swiss cheese, smoked",Sausages and Luncheon Meats,55.31,307,12.69,27.37,1.60,0.0,0.00,3.03,827,206
07921,Bacon and beef sticks,Sausages and Luncheon Meats,21.60,517,29.10,44.20,0.80,0.0,0.80,4.30,1420,385
07922,"Bratwurst, beef and pork, smoked",Sausages and Luncheon Meats,56.65,297,12.20,26.34,2.00,0.0,0.00,2.81,848,283
07923,"Bratwurst, chicken, cooked",Sausages and Luncheon Meats,70.28,176,19.44,10.35,0.00,0.0,0.00,0.88,72,211
07926,"Salami, Italian, pork",Sausages and Luncheon Meats,34.60,425,21.70,37.00,1.20,0.0,1.20,5.50,1890,340
07927,"Sausage, Italian, turkey, smoked",Sausages and Luncheon Meats,68.50,158,15.05,8.75,4.65,0.9,3.20,3.05,928,197
07928,"Sausage, chicken, beef, pork, skinless, smoked",Sausages and Luncheon Meats,60.50,216,13.60,14.30,8.10,0.0,1.90,3.50,1034,246
07929,"Sausage, turkey, hot, smoked",Sausages and Luncheon Meats,68.50,158,15.05,8.75,4.65,0.9,3.20,3.05,1196,197
07930,"Yachtwurst, with pistachio nuts, cooked",Sausages and Luncheon Meats,58.20,268,14.80,22.60,1.40,0.0,0.00,3.00,936,
07931,"Beerwurst, pork and beef",Sausages and Luncheon Meats,56.71,276,14.00,22.53,4.27,0.9,0.00,2.50,732,244
07934,"Kielbasa, Polish, turkey and beef, smoked",Sausages and Luncheon Meats,62.00,226,13.10,17.60,3.90,0.0,0.00,3.40,1200,
07935,Oven-roasted chicken breast roll,Sausages and Luncheon Meats,72.98,134,14.59,7.65,1.79,0.0,0.43,2.99,883,324
07937,"Bologna, pork, turkey and beef",Sausages and Luncheon Meats,45.37,336,11.56,29.25,6.66,0.0,1.35,7.15,1055,222
07938,"Ham, honey, smoked, cooked",Sausages and Luncheon Meats,69.94,122,17.93,2.37,7.27,0.0,0.00,2.49,900,165
07939,"Frankfurter, pork",Sausages and Luncheon Meats,59.85,269,12.81,23.68,0.28,0.1,0.00,3.35,816,264
07940,"Macaroni and cheese loaf, chicken, pork and beef",Sausages and Luncheon Meats,57.63,228,11.76,14.96,11.63,0.0,0.00,4.03,3,313
07942,"Pate, truffle flavor",Sausages and Luncheon Meats,51.80,327,11.20,28.50,6.30,,,2.20,807,138
07944,"Turkey, white, rotisserie, deli cut",Sausages and Luncheon Meats,72.00,112,13.50,3.00,7.70,0.4,4.00,3.80,1200,349
07945,"Frankfurter, beef, heated",Sausages and Luncheon Meats,53.50,322,11.69,29.36,2.66,0.0,1.27,2.79,852,252
07949,"Frankfurter, meat, heated",Sausages and Luncheon Meats,57.82,278,9.77,24.31,4.90,0.0,,3.19,1013,141
07950,"Frankfurter, meat",Sausages and Luncheon Meats,56.31,290,10.26,25.76,4.17,0.0,,3.50,1090,152
07951,"Scrapple, pork",Sausages and Luncheon Meats,62.47,213,8.06,13.87,14.06,0.3,0.20,1.53,482,158
07952,"Bologna, chicken, turkey, pork",Sausages and Luncheon Meats,55.25,298,9.88,26.18,5.65,0.0,0.00,3.03,922,152
07953,"Pork sausage, link/patty, fully cooked, microwaved",Sausages and Luncheon Meats,40.32,429,15.62,40.50,0.57,0.0,0.65,2.99,922,236
07954,"Beef sausage, pre-cooked",Sausages and Luncheon Meats,43.75,405,15.50,37.57,0.03,0.0,0.00,3.16,822,234
07955,"Turkey sausage, fresh, raw",Sausages and Luncheon Meats,70.42,155,18.79,8.08,0.47,0.0,0.00,2.24,593,262
07956,"Beef sausage, fresh, cooked",Sausages and Luncheon Meats,51.12,332,18.21,27.98,0.35,0.0,0.00,2.34,813,258
07957,"Pork and turkey sausage, pre-cooked",Sausages and Luncheon Meats,50.68,342,12.05,30.64,3.63,0.0,0.00,3.01,876,230
07958,"Turkey sausage, fresh, cooked",Sausages and Luncheon Meats,65.06,196,23.89,10.44,0.00,0.0,0.00,2.65,665,298
07959,"Bologna, chicken, pork, beef",Sausages and Luncheon Meats,56.42,272,11.33,22.73,5.61,0.0,0.00,3.93,1120,313
07960,"Bologna, chicken, pork",Sausages and Luncheon Meats,50.85,336,10.31,30.61,4.19,0.0,0.00,4.04,1240,162
07961,"Chicken breast, deli, rotisserie seasoned, sliced, prepackaged",Sausages and Luncheon Meats,74.47,98,17.40,1.86,2.92,0.0,0.75,3.34,1032,360
07962,"Frankfurter, meat and poultry, unheated",Sausages and Luncheon Meats,57.58,277,9.72,24.18,5.02,0.0,2.75,3.50,976,359
07963,"Frankfurter, meat and poultry, cooked, boiled",Sausages and Luncheon Meats,55.16,298,10.31,26.28,4.96,0.0,2.70,3.29,914,323
07964,"Frankfurter, meat and poultry, cooked, grilled",Sausages and Luncheon Meats,53.90,302,10.67,26.43,5.24,0.0,2.85,3.75,1079,387
07967,"Pork sausage, link/patty, fully cooked, unheated",Sausages and Luncheon Meats,45.96,392,13.46,37.25,0.69,0.0,0.53,2.63,810,211
07968,"Kielbasa, fully cooked, grilled",Sausages and Luncheon Meats,49.38,337,12.45,29.68,5.03,0.0,2.39,3.46,1062,306
07969,"Kielbasa, fully cooked, pan-fried",Sausages and Luncheon Meats,49.98,333,12.36,29.43,4.78,0.0,2.38,3.45,1046,304
07970,"Kielbasa, fully cooked, unheated",Sausages and Luncheon Meats,53.42,311,11.20,27.56,4.53,0.0,2.05,3.29,1004,277
07971,"Bologna, meat and poultry",Sausages and Luncheon Meats,56.10,285,10.45,24.54,5.45,0.0,1.80,3.45,1184,303
08022,"Cereals ready-to-eat, corn flakes, low sodium",Breakfast Cereals,3.00,399,7.70,0.30,88.80,1.1,6.11,0.20,10,73
08037,"Cereals ready-to-eat, granola, homemade",Breakfast Cereals,5.40,489,14.85,24.06,53.25,9.0,20.00,2.43,25,540
08084,"Cereals ready-to-eat, wheat germ, toasted, plain",Breakfast Cereals,5.60,382,29.10,10.70,49.60,15.1,7.80,5.00,4,947
08090,"Cereals, corn grits, white, regular and quick, enriched, dry",Breakfast Cereals,10.92,370,7.65,1.75,79.09,4.6,0.57,0.60,1,141
08091,"Cereals, corn grits, white, regular and quick, enriched, cooked with water, without salt",Breakfast Cereals,82.93,71,1.71,0.46,14.76,0.8,0.12,0.15,2,27
08113,"Cereals, farina, enriched, cooked with water, without salt",Breakfast Cereals,86.55,53,1.82,0.34,10.92,0.8,0.76,0.38,18,23
08120,"Cereals, oats, regular and quick, not fortified, dry",Breakfast Cereals,10.84,379,13.15,6.52,67.70,10.1,0.99,1.77,6,362
08121,"Cereals, oats, regular and quick, unenriched, cooked with water (includes boiling and microwaving), without salt",Breakfast Cereals,83.61,71,2.54,1.52,12.00,1.7,0.27,0.34,4,70
08122,"Cereals, oats, instant, fortified, plain, dry",Breakfast Cereals,8.92,362,11.92,6.90,69.52,10.0,1.50,2.75,220,366
08123,"Cereals, oats, instant, fortified, plain, prepared with water (boiling water added or microwaved)",Breakfast Cereals,84.03,68,2.37,1.36,11.67,1.7,0.46,0.56,49,61
08128,"Cereals, oats, instant, fortified, with cinnamon and spice, dry",Breakfast Cereals,6.92,369,9.53,4.84,76.08,8.0,25.33,2.63,434,284
08129,"Cereals, oats, instant, fortified, with cinnamon and spice, prepared with water",Breakfast Cereals,76.74,96,2.37,1.21,18.95,2.0,6.31,0.73,111,71
08132,"Cereals, oats, instant, fortified, with raisins and spice, dry",Breakfast Cereals,8.44,360,8.45,4.03,76.33,5.7,37.14,2.75,462,362
08133,"Cereals, oats, instant, fortified, with raisins and spice, prepared with water",Breakfast Cereals,78.44,88,1.98,0.95,17.91,1.3,8.71,0.72,111,85
08144,"Cereals, whole wheat hot natural cereal, dry",Breakfast Cereals,9.90,342,11.20,2.00,75.20,9.5,0.42,1.60,2,389
08145,"Cereals, whole wheat hot natural cereal, cooked with water, without salt",Breakfast Cereals,83.60,62,2.00,0.40,13.70,1.6,0.08,0.30,0,71
08156,"Cereals ready-to-eat, rice, puffed, fortified",Breakfast Cereals,3.00,402,6.30,0.50,89.80,1.7,,0.40,3,113
08157,"Cereals ready-to-eat, wheat, puffed, fortified",Breakfast Cereals,3.00,364,14.70,1.20,79.60,4.4,,1.50,4,348
08159,"Cereals, corn grits, yellow, regular and quick, enriched, dry",Breakfast Cereals,11.37,368,6.72,1.49,79.91,3.9,0.55,0.52,2,118
08160,"Cereals, corn grits, yellow, regular and quick, unenriched, dry",Breakfast Cereals,10.00,371,8.80,1.20,79.60,1.6,0.64,0.40,1,137
08161,"Cereals, corn grits, white, regular and quick, enriched, cooked with water, with salt",Breakfast Cereals,82.93,71,1.71,0.46,14.76,0.8,0.12,0.15,223,27
08164,"Cereals, corn grits, yellow, regular and quick, enriched, cooked with water, without salt",Breakfast Cereals,84.36,65,1.23,0.39,13.86,0.7,0.09,0.15,2,22
08165,"Cereals, corn grits, yellow, regular, quick, enriched, cooked with water, with salt",Breakfast Cereals,84.36,65,1.23,0.39,13.86,0.7,0.09,0.15,223,22
08172,"Cereals, farina, unenriched, dry",Breakfast Cereals,10.50,369,10.60,0.50,78.00,1.9,,0.40,3,94
08173,"Cereals, farina, enriched, cooked with water, with salt",Breakfast Cereals,86.55,53,1.82,0.34,10.92,0.8,0.76,0.38,126,23
08183,"Cereals, whole wheat hot natural cereal, cooked with water, with salt",Breakfast Cereals,83.60,62,2.00,0.40,13.70,1.6,0.08,0.30,233,71
08204,"Cereals ready-to-eat, chocolate-flavored frosted puffed corn",Breakfast Cereals,3.42,405,3.34,3.50,87.20,3.8,43.70,2.25,534,176
08305,"Cereals ready-to-eat, oat, corn and wheat squares, presweetened, maple flavored",Breakfast Cereals,2.50,430,6.00,9.80,79.90,1.8,40.00,1.80,383,133
08580,"Incaparina, dry mix (corn and soy flours), unprepared",Breakfast Cereals,7.47,379,21.75,5.58,60.53,9.9,,4.67,4,1030
09001,"Acerola, (west indian cherry), raw",Fruits and Fruit Juices,91.41,32,0.40,0.30,7.69,1.1,,0.20,7,146
09002,"Acerola juice, raw",Fruits and Fruit Juices,94.30,23,0.40,0.30,4.80,0.3,4.50,0.20,3,97
09003,"Apples, raw, with skin",Fruits and Fruit Juices,85.56,52,0.26,0.17,13.81,2.4,10.39,0.19,1,107
09004,"Apples, raw, without skin",Fruits and Fruit Juices,86.67,48,0.27,0.13,12.76,1.3,10.10,0.17,0,90
09005,"Apples, raw, without skin, cooked, boiled",Fruits and Fruit Juices,85.47,53,0.26,0.36,13.64,2.4,11.01,0.28,1,88
09006,"Apples, raw, without skin, cooked, microwave",Fruits and Fruit Juices,84.63,56,0.28,0.42,14.41,2.8,11.61,0.26,1,93
09007,"Apples, canned, sweetened, sliced, drained, unheated",Fruits and Fruit Juices,82.36,67,0.18,0.49,16.70,1.7,15.00,0.27,3,68
09008,"Apples, canned, sweetened, sliced, drained, heated",Fruits and Fruit Juices,82.28,67,0.18,0.43,16.84,2.0,14.84,0.27,3,70
09009,"Apples, dehydrated (low moisture), sulfured, uncooked",Fruits and Fruit Juices,3.00,346,1.32,0.58,93.53,12.4,81.13,1.57,124,640
09010,"Apples, dehydrated (low moisture), sulfured, stewed",Fruits and Fruit Juices,79.36,74,0.28,0.12,19.91,2.6,,0.33,26,136
09011,"Apples, dried, sulfured, uncooked",Fruits and Fruit Juices,31.76,243,0.93,0.32,65.89,8.7,57.19,1.10,87,450
09012,"Apples, dried, sulfured, stewed, without added sugar",Fruits and Fruit Juices,84.13,57,0.22,0.07,15.32,2.0,13.32,0.26,20,105
09013,"Apples, dried, sulfured, stewed, with added sugar",Fruits and Fruit Juices,78.76,83,0.20,0.07,20.73,1.9,,0.24,19,98
09014,"Apples, frozen, unsweetened, unheated",Fruits and Fruit Juices,86.85,48,0.28,0.32,12.31,1.3,,0.24,3,77
09015,"Apples, frozen, unsweetened, heated",Fruits and Fruit Juices,87.16,47,0.29,0.33,12.00,1.3,,0.23,3,76
09016,"Apple juice, canned or bottled, unsweetened, without added ascorbic acid",Fruits and Fruit Juices,88.24,46,0.10,0.13,11.30,0.2,9.62,0.23,4,101
09017,"Apple juice, frozen concentrate, unsweetened, undiluted, without added ascorbic acid",Fruits and Fruit Juices,57.00,166,0.51,0.37,41.00,0.4,38.83,1.12,25,448
09021,"Apricots, raw",Fruits and Fruit Juices,86.35,48,1.40,0.39,11.12,2.0,9.24,0.75,1,259
09022,"Apricots, canned, water pack, with skin, solids and liquids",Fruits and Fruit Juices,92.36,27,0.71,0.16,6.39,1.6,4.79,0.38,3,192
09023,"Apricots, canned, water pack, without skin, solids and liquids",Fruits and Fruit Juices,93.43,22,0.69,0.03,5.48,1.1,,0.38,11,154
09024,"Apricots, canned, juice pack, with skin, solids and liquids",Fruits and Fruit Juices,86.62,48,0.63,0.04,12.34,1.6,10.74,0.37,4,165
09026,"Apricots, canned, light syrup pack, with skin, solids and liquids",Fruits and Fruit Juices,82.56,63,0.53,0.05,16.49,1.6,14.89,0.37,4,138
09027,"Apricots, canned, heavy syrup pack, with skin, solids and liquids",Fruits and Fruit Juices,77.56,83,0.53,0.08,21.47,1.6,19.87,0.37,4,140
09028,"Apricots, canned, heavy syrup pack, without skin, solids and liquids",Fruits and Fruit Juices,77.66,83,0.51,0.09,21.45,1.6,,0.29,11,134
09030,"Apricots, dehydrated (low-moisture), sulfured, uncooked",Fruits and Fruit Juices,7.50,320,4.90,0.62,82.89,,,4.09,13,1850
09031,"Apricots, dehydrated (low-moisture), sulfured, stewed",Fruits and Fruit Juices,63.60,126,1.93,0.24,32.62,,,1.61,5,728
09032,"Apricots, dried, sulfured, uncooked",Fruits and Fruit Juices,30.89,241,3.39,0.51,62.64,7.3,53.44,2.57,10,1162
09033,"Apricots, dried, sulfured, stewed, without added sugar",Fruits and Fruit Juices,75.56,85,1.20,0.18,22.15,2.6,19.57,0.91,4,411
09034,"Apricots, dried, sulfured, stewed, with added sugar",Fruits and Fruit Juices,68.45,113,1.17,0.15,29.26,4.1,,0.98,3,443
09035,"Apricots, frozen, sweetened",Fruits and Fruit Juices,73.30,98,0.70,0.10,25.10,2.2,,0.80,4,229
09036,"Apricot nectar, canned, without added ascorbic acid",Fruits and Fruit Juices,84.87,56,0.37,0.09,14.39,0.6,13.79,0.29,3,114
09037,"Avocados, raw, all commercial varieties",Fruits and Fruit Juices,73.23,160,2.00,14.66,8.53,6.7,0.66,1.58,7,485
09040,"Bananas, raw",Fruits and Fruit Juices,74.91,89,1.09,0.33,22.84,2.6,12.23,0.82,1,358
09041,"Bananas, dehydrated, or banana powder",Fruits and Fruit Juices,3.00,346,3.89,1.81,88.28,9.9,47.30,3.02,3,1491
09042,"Blackberries, raw",Fruits and Fruit Juices,88.15,43,1.39,0.49,9.61,5.3,4.88,0.37,1,162
09043,"Blackberry juice, canned",Fruits and Fruit Juices,90.90,38,0.30,0.60,7.80,0.1,7.70,0.40,1,135
09044,"Cherries, tart, dried, sweetened",Fruits and Fruit Juices,16.60,333,1.25,0.73,80.45,2.5,67.15,0.97,13,376
09046,"Blackberries, canned, heavy syrup, solids and liquids",Fruits and Fruit Juices,75.06,92,1.31,0.14,23.10,3.4,19.70,0.39,3,99
09048,"Blackberries, frozen, unsweetened",Fruits and Fruit Juices,82.21,64,1.18,0.43,15.67,5.0,10.67,0.51,1,140
09050,"Blueberries, raw",Fruits and Fruit Juices,84.21,57,0.74,0.33,14.49,2.4,9.96,0.24,1,77
09052,"Blueberries, canned, heavy syrup, solids and liquids",Fruits and Fruit Juices,76.78,88,0.65,0.33,22.06,1.6,20.46,0.17,3,40
09053,"Blueberries, wild, frozen",Fruits and Fruit Juices,85.80,57,0.00,0.16,13.85,4.4,,0.19,3,68
09054,"Blueberries, frozen, unsweetened",Fruits and Fruit Juices,86.59,51,0.42,0.64,12.17,2.7,8.45,0.18,1,54
09055,"Blueberries, frozen, sweetened",Fruits and Fruit Juices,77.40,85,0.40,0.13,21.95,2.2,19.72,0.12,1,60
09056,"Boysenberries, canned, heavy syrup",Fruits and Fruit Juices,76.26,88,0.99,0.12,22.31,2.6,,0.32,3,90
09057,"Boysenberries, frozen, unsweetened",Fruits and Fruit Juices,85.90,50,1.10,0.26,12.19,5.3,6.89,0.54,1,139
09059,"Breadfruit, raw",Fruits and Fruit Juices,70.65,103,1.07,0.23,27.12,4.9,11.00,0.93,2,490
09060,"Carambola, (starfruit), raw",Fruits and Fruit Juices,91.38,31,1.04,0.33,6.73,2.8,3.98,0.52,2,133
09061,"Carissa, (natal-plum), raw",Fruits and Fruit Juices,84.17,62,0.50,1.30,13.63,,,0.40,3,260
09062,"Cherimoya, raw",Fruits and Fruit Juices,79.39,75,1.57,0.68,17.71,3.0,12.87,0.65,7,287
09063,"Cherries, sour, red, raw",Fruits and Fruit Juices,86.13,50,1.00,0.30,12.18,1.6,8.49,0.40,3,173
09065,"Cherries, sour, red, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,79.62,75,0.74,0.10,19.30,0.8,,0.25,7,95
09066,"Cherries, sour, red, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,75.66,91,0.73,0.10,23.27,1.1,22.17,0.25,7,93
09068,"Cherries, sour, red, frozen, unsweetened",Fruits and Fruit Juices,87.20,46,0.92,0.44,11.02,1.6,9.02,0.42,1,124
09070,"Cherries, sweet, raw",Fruits and Fruit Juices,82.25,63,1.06,0.20,16.01,2.1,12.82,0.48,0,222
09071,"Cherries, sweet, canned, water pack, solids and liquids",Fruits and Fruit Juices,87.05,46,0.77,0.13,11.76,1.5,10.26,0.29,1,131
09072,"Cherries, sweet, canned, juice pack, solids and liquids",Fruits and Fruit Juices,84.95,54,0.91,0.02,13.81,1.5,12.31,0.31,3,131
09073,"Cherries, sweet, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,81.56,67,0.61,0.15,17.29,1.5,15.79,0.38,3,148
09074,"Cherries, sweet, canned, pitted, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,77.61,83,0.60,0.15,21.27,1.4,16.18,0.38,3,145
09076,"Cherries, sweet, frozen, sweetened",Fruits and Fruit Juices,75.53,89,1.15,0.13,22.36,2.1,20.26,0.83,1,199
09077,"Crabapples, raw",Fruits and Fruit Juices,78.94,76,0.40,0.30,19.95,,,0.42,1,194
09078,"Cranberries, raw",Fruits and Fruit Juices,87.13,46,0.39,0.13,12.20,4.6,4.04,0.15,2,85
09079,"Cranberries, dried, sweetened",Fruits and Fruit Juices,16.00,308,0.07,1.37,82.36,5.7,65.00,0.20,3,40
09081,"Cranberry sauce, canned, sweetened",Fruits and Fruit Juices,60.65,151,0.20,0.15,38.90,1.0,37.90,0.10,29,26
09082,"Cranberry-orange relish, canned",Fruits and Fruit Juices,53.20,178,0.30,0.10,46.20,0.0,,0.20,32,38
09083,"Currants, european black, raw",Fruits and Fruit Juices,81.96,63,1.40,0.41,15.38,,,0.86,2,322
09084,"Currants, red and white, raw",Fruits and Fruit Juices,83.95,56,1.40,0.20,13.80,4.3,7.37,0.66,1,275
09085,"Currants, zante, dried",Fruits and Fruit Juices,19.21,283,4.08,0.27,74.08,6.8,67.28,2.36,8,892
09086,"Custard-apple, (bullock's-heart), raw",Fruits and Fruit Juices,71.50,101,1.70,0.60,25.20,2.4,,1.00,4,382
09087,"Dates, deglet noor",Fruits and Fruit Juices,20.53,282,2.45,0.39,75.03,8.0,63.35,1.60,2,656
09088,"Elderberries, raw",Fruits and Fruit Juices,79.80,73,0.66,0.50,18.40,7.0,,0.64,6,280
09089,"Figs, raw",Fruits and Fruit Juices,79.11,74,0.75,0.30,19.18,2.9,16.26,0.66,1,232
09090,"Figs, canned, water pack, solids and liquids",Fruits and Fruit Juices,85.21,53,0.40,0.10,13.99,2.2,11.79,0.30,1,103
09091,"Figs, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,81.26,69,0.39,0.10,17.95,1.8,16.15,0.30,1,102
09092,"Figs, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,76.33,88,0.38,0.10,22.90,2.2,20.70,0.29,1,99
09094,"Figs, dried, uncooked",Fruits and Fruit Juices,30.05,249,3.30,0.93,63.87,9.8,47.92,1.86,10,680
09095,"Figs, dried, stewed",Fruits and Fruit Juices,69.80,107,1.42,0.40,27.57,4.2,23.35,0.80,4,294
09096,"Fruit cocktail, (peach and pineapple and pear and grape and cherry), canned, water pack, solids and liquids",Fruits and Fruit Juices,90.76,32,0.42,0.05,8.51,1.0,7.51,0.26,4,94
09097,"Fruit cocktail, (peach and pineapple and pear and grape and cherry), canned, juice pack, solids and liquids",Fruits and Fruit Juices,87.44,46,0.46,0.01,11.86,1.0,10.86,0.23,4,95
09099,"Fruit cocktail, (peach and pineapple and pear and grape and cherry), canned, light syrup, solids and liquids",Fruits and Fruit Juices,84.37,57,0.40,0.07,14.93,1.0,13.93,0.23,6,89
09100,"Fruit cocktail, (peach and pineapple and pear and grape and cherry), canned, heavy syrup, solids and liquids",Fruits and Fruit Juices,80.40,73,0.39,0.07,18.91,1.0,17.91,0.23,6,88
09102,"Fruit salad, (peach and pear and apricot and pineapple and cherry), canned, water pack, solids and liquids",Fruits and Fruit Juices,91.50,30,0.35,0.07,7.87,1.0,,0.22,3,78
09103,"Fruit salad, (peach and pear and apricot and pineapple and cherry), canned, juice pack, solids and liquids",Fruits and Fruit Juices,86.15,50,0.51,0.03,13.05,1.0,,0.26,5,116
09104,"Fruit salad, (peach and pear and apricot and pineapple and cherry), canned, light syrup, solids and liquids",Fruits and Fruit Juices,84.24,58,0.34,0.07,15.14,1.0,,0.21,6,82
09105,"Fruit salad, (peach and pear and apricot and pineapple and cherry), canned, heavy syrup, solids and liquids",Fruits and Fruit Juices,80.26,73,0.34,0.07,19.11,1.0,18.11,0.21,6,80
09107,"Gooseberries, raw",Fruits and Fruit Juices,87.87,44,0.88,0.58,10.18,4.3,,0.49,1,198
09109,"Gooseberries, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,80.10,73,0.65,0.20,18.75,2.4,,0.29,2,77
09111,"Grapefruit, raw, pink and red and white, all areas",Fruits and Fruit Juices,90.89,32,0.63,0.10,8.08,1.1,6.98,0.31,0,139
09112,"Grapefruit, raw, pink and red, all areas",Fruits and Fruit Juices,88.06,42,0.77,0.14,10.66,1.6,6.89,0.36,0,135
09116,"Grapefruit, raw, white, all areas",Fruits and Fruit Juices,90.48,33,0.69,0.10,8.41,1.1,7.31,0.33,0,148
09119,"Grapefruit, sections, canned, water pack, solids and liquids",Fruits and Fruit Juices,89.85,36,0.58,0.10,9.15,0.4,8.75,0.32,2,132
09120,"Grapefruit, sections, canned, juice pack, solids and liquids",Fruits and Fruit Juices,89.67,37,0.70,0.09,9.21,0.4,8.80,0.34,7,169
09121,"Grapefruit, sections, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,83.59,60,0.56,0.10,15.44,0.4,15.04,0.31,2,129
09123,"Grapefruit juice, white, canned, unsweetened",Fruits and Fruit Juices,90.10,38,0.52,0.10,8.96,0.1,8.86,0.32,1,153
09124,"Grapefruit juice, white, canned, sweetened",Fruits and Fruit Juices,87.38,46,0.58,0.09,11.13,0.1,11.03,0.82,2,162
09125,"Grapefruit juice, white, frozen concentrate, unsweetened, undiluted",Fruits and Fruit Juices,62.00,146,1.97,0.48,34.56,0.4,34.16,0.99,3,484
09128,"Grapefruit juice, white, raw",Fruits and Fruit Juices,90.00,39,0.50,0.10,9.20,0.1,9.10,0.20,1,162
09129,"Grapes, muscadine, raw",Fruits and Fruit Juices,84.29,57,0.81,0.47,13.93,3.9,,0.50,1,203
09130,"Grape juice, canned or bottled, unsweetened, with added ascorbic acid",Fruits and Fruit Juices,84.51,60,0.37,0.13,14.77,0.2,14.20,0.22,5,104
09131,"Grapes, american type (slip skin), raw",Fruits and Fruit Juices,81.30,67,0.63,0.35,17.15,0.9,16.25,0.57,2,191
09132,"Grapes, red or green (European type, such as Thompson seedless), raw",Fruits and Fruit Juices,80.54,69,0.72,0.16,18.10,0.9,15.48,0.48,2,191
09133,"Grapes, canned, thompson seedless, water pack, solids and liquids",Fruits and Fruit Juices,88.84,40,0.50,0.11,10.30,0.6,9.70,0.25,6,107
09134,"Grapes, canned, thompson seedless, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,79.53,76,0.48,0.10,19.65,0.6,19.05,0.24,5,103
09135,"Grape juice, canned or bottled, unsweetened, without added ascorbic acid",Fruits and Fruit Juices,84.51,60,0.37,0.13,14.77,0.2,14.20,0.22,5,104
09138,"Groundcherries, (cape-gooseberries or poha), raw",Fruits and Fruit Juices,85.40,53,1.90,0.70,11.20,,,0.80,,
09139,"Guavas, common, raw",Fruits and Fruit Juices,80.80,68,2.55,0.95,14.32,5.4,8.92,1.39,2,417
09140,"Guavas, strawberry, raw",Fruits and Fruit Juices,80.66,69,0.58,0.60,17.36,5.4,,0.80,37,292
09143,"Guava sauce, cooked",Fruits and Fruit Juices,89.56,36,0.32,0.14,9.48,3.6,5.88,0.50,4,225
09144,"Jackfruit, raw",Fruits and Fruit Juices,73.46,95,1.72,0.64,23.25,1.5,19.08,0.94,2,448
09145,"Java-plum, (jambolan), raw",Fruits and Fruit Juices,83.13,60,0.72,0.23,15.56,,,0.36,14,79
09146,"Jujube, raw",Fruits and Fruit Juices,77.86,79,1.20,0.20,20.23,,,0.51,3,250
09147,"Jujube, dried",Fruits and Fruit Juices,19.70,287,3.70,1.10,73.60,,,1.90,9,531
09148,"Kiwifruit, green, raw",Fruits and Fruit Juices,83.07,61,1.14,0.52,14.66,3.0,8.99,0.61,3,312
09149,"Kumquats, raw",Fruits and Fruit Juices,80.85,71,1.88,0.86,15.90,6.5,9.36,0.52,10,186
09150,"Lemons, raw, without peel",Fruits and Fruit Juices,88.98,29,1.10,0.30,9.32,2.8,2.50,0.30,2,138
09152,"Lemon juice, raw",Fruits and Fruit Juices,92.31,22,0.35,0.24,6.90,0.3,2.52,0.21,1,103
09153,"Lemon juice, canned or bottled",Fruits and Fruit Juices,92.46,21,0.40,0.29,6.48,0.4,2.40,0.36,21,102
09154,"Lemon juice, frozen, unsweetened, single strength",Fruits and Fruit Juices,92.39,22,0.46,0.32,6.50,0.4,2.40,0.33,1,89
09156,"Lemon peel, raw",Fruits and Fruit Juices,81.60,47,1.50,0.30,16.00,10.6,4.17,0.60,6,160
09159,"Limes, raw",Fruits and Fruit Juices,88.26,30,0.70,0.20,10.54,2.8,1.69,0.30,2,102
09160,"Lime juice, raw",Fruits and Fruit Juices,90.79,25,0.42,0.07,8.42,0.4,1.69,0.31,2,117
09161,"Lime juice, canned or bottled, unsweetened",Fruits and Fruit Juices,92.52,21,0.25,0.23,6.69,0.4,1.37,0.31,16,75
09163,"Blueberries, dried, sweetened",Fruits and Fruit Juices,14.80,317,2.50,2.50,80.00,7.5,67.50,0.73,3,214
09164,"Litchis, raw",Fruits and Fruit Juices,81.76,66,0.83,0.44,16.53,1.3,15.23,0.44,1,171
09165,"Litchis, dried",Fruits and Fruit Juices,22.30,277,3.80,1.20,70.70,4.6,66.10,2.00,3,1110
09167,"Loganberries, frozen",Fruits and Fruit Juices,84.61,55,1.52,0.31,13.02,5.3,7.70,0.54,1,145
09172,"Longans, raw",Fruits and Fruit Juices,82.75,60,1.31,0.10,15.14,1.1,,0.70,0,266
09173,"Longans, dried",Fruits and Fruit Juices,17.60,286,4.90,0.40,74.00,,,3.10,48,658
09174,"Loquats, raw",Fruits and Fruit Juices,86.73,47,0.43,0.20,12.14,1.7,,0.50,1,266
09175,"Mammy-apple, (mamey), raw",Fruits and Fruit Juices,86.20,51,0.50,0.50,12.50,3.0,,0.30,15,47
09176,"Mangos, raw",Fruits and Fruit Juices,83.46,60,0.82,0.38,14.98,1.6,13.66,0.36,1,168
09177,"Mangosteen, canned, syrup pack",Fruits and Fruit Juices,80.94,73,0.41,0.58,17.91,1.8,,0.16,7,48
09181,"Melons, cantaloupe, raw",Fruits and Fruit Juices,90.15,34,0.84,0.19,8.16,0.9,7.86,0.65,16,267
09183,"Melons, casaba, raw",Fruits and Fruit Juices,91.85,28,1.11,0.10,6.58,0.9,5.69,0.36,9,182
09184,"Melons, honeydew, raw",Fruits and Fruit Juices,89.82,36,0.54,0.14,9.09,0.8,8.12,0.41,18,228
09185,"Melon balls, frozen",Fruits and Fruit Juices,90.26,33,0.84,0.25,7.94,0.7,,0.71,31,280
09190,"Mulberries, raw",Fruits and Fruit Juices,87.68,43,1.44,0.39,9.80,1.7,8.10,0.69,10,194
09191,"Nectarines, raw",Fruits and Fruit Juices,87.59,44,1.06,0.32,10.55,1.7,7.89,0.48,0,201
09192,"Oheloberries, raw",Fruits and Fruit Juices,92.30,28,0.38,0.22,6.84,,,0.26,1,38
09193,"Olives, ripe, canned (small-extra large)",Fruits and Fruit Juices,79.99,115,0.84,10.68,6.26,3.2,0.00,2.23,735,8
09194,"Olives, ripe, canned (jumbo-super colossal)",Fruits and Fruit Juices,84.34,81,0.97,6.87,5.61,2.5,0.00,2.22,735,9
09195,"Olives, pickled, canned or bottled, green",Fruits and Fruit Juices,75.28,145,1.03,15.32,3.84,3.3,0.54,4.53,1556,42
09200,"Oranges, raw, all commercial varieties",Fruits and Fruit Juices,86.75,47,0.94,0.12,11.75,2.4,9.35,0.44,0,181
09202,"Oranges, raw, navels",Fruits and Fruit Juices,85.97,49,0.91,0.15,12.54,2.2,8.50,0.43,1,166
09205,"Oranges, raw, with peel",Fruits and Fruit Juices,82.30,63,1.30,0.30,15.50,4.5,,0.60,2,196
09206,"Orange juice, raw",Fruits and Fruit Juices,88.30,45,0.70,0.20,10.40,0.2,8.40,0.40,1,200
09207,"Orange juice, canned, unsweetened",Fruits and Fruit Juices,87.72,47,0.68,0.15,11.01,0.3,8.76,0.43,4,184
09209,"Orange juice, chilled, includes from concentrate",Fruits and Fruit Juices,87.22,49,0.68,0.12,11.54,0.3,8.31,0.43,2,178
09210,"Orange juice, chilled, includes from concentrate, fortified with calcium and vitamin D",Fruits and Fruit Juices,87.22,47,0.68,0.12,11.27,0.3,8.31,0.71,2,178
09211,"Orange juice, chilled, includes from concentrate, fortified with calcium",Fruits and Fruit Juices,87.22,47,0.68,0.12,11.27,0.3,8.31,0.71,2,178
09214,"Orange juice, frozen concentrate, unsweetened, undiluted",Fruits and Fruit Juices,57.85,159,2.39,0.21,38.17,0.8,37.37,1.38,3,674
09216,"Orange peel, raw",Fruits and Fruit Juices,72.50,97,1.50,0.20,25.00,10.6,,0.80,3,212
09217,"Orange-grapefruit juice, canned, unsweetened",Fruits and Fruit Juices,88.64,43,0.60,0.10,10.28,0.1,10.18,0.39,3,158
09218,"Tangerines, (mandarin oranges), raw",Fruits and Fruit Juices,85.17,53,0.81,0.31,13.34,1.8,10.58,0.38,2,166
09219,"Tangerines, (mandarin oranges), canned, juice pack",Fruits and Fruit Juices,89.51,37,0.62,0.03,9.57,0.7,8.87,0.28,5,133
09220,"Tangerines, (mandarin oranges), canned, light syrup pack",Fruits and Fruit Juices,83.06,61,0.45,0.10,16.19,0.7,15.49,0.19,6,78
09221,"Tangerine juice, raw",Fruits and Fruit Juices,88.90,43,0.50,0.20,10.10,0.2,9.90,0.30,1,178
09223,"Tangerine juice, canned, sweetened",Fruits and Fruit Juices,87.00,50,0.50,0.20,12.00,0.2,11.80,0.30,1,178
09224,"Tangerine juice, frozen concentrate, sweetened, undiluted",Fruits and Fruit Juices,58.20,161,1.50,0.39,38.85,0.6,,1.07,3,397
09226,"Papayas, raw",Fruits and Fruit Juices,88.06,43,0.47,0.26,10.82,1.7,7.82,0.39,8,182
09228,"Papaya, canned, heavy syrup, drained",Fruits and Fruit Juices,43.33,206,0.14,0.55,55.83,1.5,52.20,0.15,9,67
09229,"Papaya nectar, canned",Fruits and Fruit Juices,85.02,57,0.17,0.15,14.51,0.6,13.91,0.15,5,31
09231,"Passion-fruit, (granadilla), purple, raw",Fruits and Fruit Juices,72.93,97,2.20,0.70,23.38,10.4,11.20,0.80,28,348
09232,"Passion-fruit juice, purple, raw",Fruits and Fruit Juices,85.62,51,0.39,0.05,13.60,0.2,13.40,0.34,6,278
09233,"Passion-fruit juice, yellow, raw",Fruits and Fruit Juices,84.21,60,0.67,0.18,14.45,0.2,14.25,0.49,6,278
09236,"Peaches, raw",Fruits and Fruit Juices,88.87,39,0.91,0.25,9.54,1.5,8.39,0.43,0,190
09237,"Peaches, canned, water pack, solids and liquids",Fruits and Fruit Juices,93.13,24,0.44,0.06,6.11,1.3,4.81,0.27,3,99
09238,"Peaches, canned, juice pack, solids and liquids",Fruits and Fruit Juices,87.49,44,0.63,0.03,11.57,1.3,10.27,0.27,4,128
09240,"Peaches, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,84.72,54,0.45,0.03,14.55,1.3,13.25,0.25,5,97
09241,"Peaches, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,79.28,74,0.45,0.10,19.94,1.3,18.64,0.24,6,92
09243,"Peaches, spiced, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,79.20,75,0.41,0.10,20.08,1.3,18.78,0.21,4,85
09244,"Peaches, dehydrated (low-moisture), sulfured, uncooked",Fruits and Fruit Juices,7.50,325,4.89,1.03,83.18,,,3.39,10,1351
09245,"Peaches, dehydrated (low-moisture), sulfured, stewed",Fruits and Fruit Juices,62.04,133,2.01,0.42,34.14,,,1.39,4,554
09246,"Peaches, dried, sulfured, uncooked",Fruits and Fruit Juices,31.80,239,3.61,0.76,61.33,8.2,41.74,2.50,7,996
09247,"Peaches, dried, sulfured, stewed, without added sugar",Fruits and Fruit Juices,78.10,77,1.16,0.25,19.69,2.7,16.99,0.80,2,320
09248,"Peaches, dried, sulfured, stewed, with added sugar",Fruits and Fruit Juices,71.38,103,1.06,0.22,26.60,2.4,,0.73,2,292
09250,"Peaches, frozen, sliced, sweetened",Fruits and Fruit Juices,74.73,94,0.63,0.13,23.98,1.8,22.18,0.53,6,130
09251,"Peach nectar, canned, without added ascorbic acid",Fruits and Fruit Juices,85.64,54,0.27,0.02,13.92,0.6,13.32,0.15,7,40
09252,"Pears, raw",Fruits and Fruit Juices,83.96,57,0.36,0.14,15.23,3.1,9.75,0.32,1,116
09253,"Pears, canned, water pack, solids and liquids",Fruits and Fruit Juices,91.81,29,0.19,0.03,7.81,1.6,6.10,0.16,2,53
09254,"Pears, canned, juice pack, solids and liquids",Fruits and Fruit Juices,86.47,50,0.34,0.07,12.94,1.6,9.70,0.19,4,96
09256,"Pears, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,84.46,57,0.19,0.03,15.17,1.6,12.10,0.14,5,66
09257,"Pears, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,80.35,74,0.20,0.13,19.17,1.6,15.20,0.15,5,65
09259,"Pears, dried, sulfured, uncooked",Fruits and Fruit Juices,26.69,262,1.87,0.63,69.70,7.5,62.20,1.11,6,533
09260,"Pears, dried, sulfured, stewed, without added sugar",Fruits and Fruit Juices,64.44,127,0.91,0.31,33.81,6.4,27.41,0.54,3,258
09261,"Pears, dried, sulfured, stewed, with added sugar",Fruits and Fruit Juices,61.20,140,0.86,0.29,37.14,5.8,,0.51,3,245
09262,"Pear nectar, canned, without added ascorbic acid",Fruits and Fruit Juices,84.01,60,0.11,0.01,15.76,0.6,15.16,0.10,4,13
09263,"Persimmons, japanese, raw",Fruits and Fruit Juices,80.32,70,0.58,0.19,18.59,3.6,12.53,0.33,1,161
09264,"Persimmons, japanese, dried",Fruits and Fruit Juices,23.01,274,1.38,0.59,73.43,14.5,,1.59,2,802
09265,"Persimmons, native, raw",Fruits and Fruit Juices,64.40,127,0.80,0.40,33.50,,,0.90,1,310
09266,"Pineapple, raw, all varieties",Fruits and Fruit Juices,86.00,50,0.54,0.12,13.12,1.4,9.85,0.22,1,109
09267,"Pineapple, canned, water pack, solids and liquids",Fruits and Fruit Juices,90.82,32,0.43,0.09,8.30,0.8,7.50,0.35,1,127
09268,"Pineapple, canned, juice pack, solids and liquids",Fruits and Fruit Juices,83.51,60,0.42,0.08,15.70,0.8,14.45,0.30,1,122
09269,"Pineapple, canned, light syrup pack, solids and liquids",Fruits and Fruit Juices,85.73,52,0.36,0.12,13.45,0.8,12.65,0.35,1,105
09270,"Pineapple, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,78.99,78,0.35,0.11,20.20,0.8,16.90,0.34,1,104
09272,"Pineapple, frozen, chunks, sweetened",Fruits and Fruit Juices,77.10,86,0.40,0.10,22.20,1.1,21.10,0.20,2,100
09273,"Pineapple juice, canned, unsweetened, without added ascorbic acid",Fruits and Fruit Juices,86.37,53,0.36,0.12,12.87,0.2,9.98,0.28,2,130
09274,"Pineapple juice, frozen concentrate, unsweetened, undiluted",Fruits and Fruit Juices,53.10,179,1.30,0.10,44.30,0.7,43.60,1.20,3,472
09276,"Pitanga, (surinam-cherry), raw",Fruits and Fruit Juices,90.81,33,0.80,0.40,7.49,,,0.50,3,103
09277,"Plantains, raw",Fruits and Fruit Juices,65.28,122,1.30,0.37,31.89,2.3,15.00,1.17,4,499
09278,"Plantains, cooked",Fruits and Fruit Juices,67.30,116,0.79,0.18,31.15,2.3,14.00,0.58,5,465
09279,"Plums, raw",Fruits and Fruit Juices,87.23,46,0.70,0.28,11.42,1.4,9.92,0.37,0,157
09281,"Plums, canned, purple, water pack, solids and liquids",Fruits and Fruit Juices,88.35,41,0.39,0.01,11.03,0.9,10.10,0.23,1,126
09282,"Plums, canned, purple, juice pack, solids and liquids",Fruits and Fruit Juices,84.02,58,0.51,0.02,15.15,0.9,14.22,0.30,1,154
09283,"Plums, canned, purple, light syrup pack, solids and liquids",Fruits and Fruit Juices,83.00,63,0.37,0.10,16.28,0.9,15.35,0.25,20,93
09284,"Plums, canned, purple, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,76.06,89,0.36,0.10,23.24,0.9,22.31,0.24,19,91
09286,"Pomegranates, raw",Fruits and Fruit Juices,77.93,83,1.67,1.17,18.70,4.0,13.67,0.53,3,236
09287,"Prickly pears, raw",Fruits and Fruit Juices,87.55,41,0.73,0.51,9.57,3.6,,1.64,5,220
09288,"Prunes, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,70.67,105,0.87,0.20,27.80,3.8,,0.46,3,226
09289,"Prunes, dehydrated (low-moisture), uncooked",Fruits and Fruit Juices,4.00,339,3.70,0.73,89.07,,,2.50,5,1058
09290,"Prunes, dehydrated (low-moisture), stewed",Fruits and Fruit Juices,67.99,113,1.23,0.24,29.70,,,0.83,2,353
09291,"Plums, dried (prunes), uncooked",Fruits and Fruit Juices,30.92,240,2.18,0.38,63.88,7.1,38.13,2.64,2,732
09292,"Plums, dried (prunes), stewed, without added sugar",Fruits and Fruit Juices,69.73,107,0.96,0.16,28.08,3.1,24.98,1.16,1,321
09293,"Plums, dried (prunes), stewed, with added sugar",Fruits and Fruit Juices,65.08,124,1.09,0.22,32.88,3.8,,0.73,2,312
09294,"Prune juice, canned",Fruits and Fruit Juices,81.24,71,0.61,0.03,17.45,1.0,16.45,0.68,4,276
09295,"Pummelo, raw",Fruits and Fruit Juices,89.10,38,0.76,0.04,9.62,1.0,,0.48,1,216
09296,"Quinces, raw",Fruits and Fruit Juices,83.80,57,0.40,0.10,15.30,1.9,,0.40,4,197
09297,"Raisins, golden seedless",Fruits and Fruit Juices,14.97,302,3.39,0.46,79.52,4.0,59.19,1.66,12,746
09298,"Raisins, seedless",Fruits and Fruit Juices,15.43,299,3.07,0.46,79.18,3.7,59.19,1.85,11,749
09299,"Raisins, seeded",Fruits and Fruit Juices,16.57,296,2.52,0.54,78.47,6.8,,1.89,28,825
09301,"Rambutan, canned, syrup pack",Fruits and Fruit Juices,78.04,82,0.65,0.21,20.87,0.9,,0.23,11,42
09302,"Raspberries, raw",Fruits and Fruit Juices,85.75,52,1.20,0.65,11.94,6.5,4.42,0.46,1,151
09304,"Raspberries, canned, red, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,75.33,91,0.83,0.12,23.36,3.3,20.06,0.36,3,94
09306,"Raspberries, frozen, red, sweetened",Fruits and Fruit Juices,72.75,103,0.70,0.16,26.16,4.4,21.76,0.24,1,114
09307,"Rhubarb, raw",Fruits and Fruit Juices,93.61,21,0.90,0.20,4.54,1.8,1.10,0.76,4,288
09309,"Rhubarb, frozen, uncooked",Fruits and Fruit Juices,93.51,21,0.55,0.11,5.10,1.8,1.10,0.72,2,108
09310,"Rhubarb, frozen, cooked, with sugar",Fruits and Fruit Juices,67.79,116,0.39,0.05,31.20,2.0,28.70,0.56,1,96
09311,"Roselle, raw",Fruits and Fruit Juices,86.58,49,0.96,0.64,11.31,,,0.51,6,208
09312,"Rose-apples, raw",Fruits and Fruit Juices,93.00,25,0.60,0.30,5.70,,,0.40,0,123
09313,"Sapodilla, raw",Fruits and Fruit Juices,78.00,83,0.44,1.10,19.96,5.3,,0.50,12,193
09314,"Sapote, mamey, raw",Fruits and Fruit Juices,64.87,124,1.45,0.46,32.10,5.4,20.14,1.12,7,454
09315,"Soursop, raw",Fruits and Fruit Juices,81.16,66,1.00,0.30,16.84,3.3,13.54,0.70,14,278
09316,"Strawberries, raw",Fruits and Fruit Juices,90.95,32,0.67,0.30,7.68,2.0,4.89,0.40,1,153
09317,"Strawberries, canned, heavy syrup pack, solids and liquids",Fruits and Fruit Juices,75.35,92,0.56,0.26,23.53,1.7,21.83,0.30,4,86
09318,"Strawberries, frozen, unsweetened",Fruits and Fruit Juices,89.97,35,0.43,0.11,9.13,2.1,4.56,0.37,2,148
09319,"Strawberries, frozen, sweetened, whole",Fruits and Fruit Juices,78.05,78,0.52,0.14,21.00,1.9,18.61,0.30,1,98
09320,"Strawberries, frozen, sweetened, sliced",Fruits and Fruit Juices,73.18,96,0.53,0.13,25.92,1.9,24.01,0.24,3,98
09321,"Sugar-apples, (sweetsop), raw",Fruits and Fruit Juices,73.23,94,2.06,0.29,23.64,4.4,,0.78,9,247
09322,"Tamarinds, raw",Fruits and Fruit Juices,31.40,239,2.80,0.60,62.50,5.1,57.40,2.70,28,628
09325,"Fruit salad, (pineapple and papaya and banana and guava), tropical, canned, heavy syrup, solids and liquids",Fruits and Fruit Juices,76.78,86,0.41,0.10,22.36,1.3,,0.35,2,131
09326,"Watermelon, raw",Fruits and Fruit Juices,91.45,30,0.61,0.15,7.55,0.4,6.20,0.25,1,112
09328,"Maraschino cherries, canned, drained",Fruits and Fruit Juices,57.27,165,0.22,0.21,41.97,3.2,38.77,0.34,4,21
09334,"Feijoa, raw",Fruits and Fruit Juices,84.94,55,0.98,0.60,12.92,6.4,8.20,0.56,3,172
09340,"Pears, asian, raw",Fruits and Fruit Juices,88.25,42,0.50,0.23,10.65,3.6,7.05,0.37,0,121
09351,"Fruit cocktail, canned, heavy syrup, drained",Fruits and Fruit Juices,80.40,70,0.47,0.10,18.80,1.7,17.14,0.24,6,90
09352,"Blueberries, canned, light syrup, drained",Fruits and Fruit Juices,75.72,88,1.04,0.40,22.66,2.6,17.45,0.18,3,54
09353,"Blueberries, wild, canned, heavy syrup, drained",Fruits and Fruit Juices,70.63,107,0.56,0.34,28.32,4.9,19.28,0.15,1,46
09354,"Pineapple, canned, juice pack, drained",Fruits and Fruit Juices,83.51,60,0.51,0.11,15.56,1.3,14.26,0.31,1,124
09357,"Apricots, canned, heavy syrup, drained",Fruits and Fruit Juices,77.56,83,0.64,0.11,21.31,2.7,18.65,0.38,4,143
09362,"Cherries, sour, canned, water pack, drained",Fruits and Fruit Juices,88.31,42,0.69,0.21,10.45,1.2,6.99,0.34,4,115
09367,"Cherries, sweet, canned, pitted, heavy syrup, drained",Fruits and Fruit Juices,77.61,83,0.73,0.21,21.07,2.3,16.18,0.39,3,148
09370,"Peaches, canned, heavy syrup, drained",Fruits and Fruit Juices,80.62,72,0.52,0.18,18.43,1.2,14.66,0.26,6,94
09374,"Pears, canned, heavy syrup, drained",Fruits and Fruit Juices,80.35,74,0.24,0.18,19.08,2.7,16.42,0.15,5,66
09379,"Plums, canned, heavy syrup, drained",Fruits and Fruit Juices,76.06,89,0.44,0.14,23.12,1.5,21.58,0.25,19,93
09383,"Tangerines, (mandarin oranges), canned, juice pack, drained",Fruits and Fruit Juices,89.51,38,0.75,0.04,9.41,1.2,8.25,0.29,5,136
09400,"Apple juice, canned or bottled, unsweetened, with added ascorbic acid",Fruits and Fruit Juices,88.24,46,0.10,0.13,11.30,0.2,9.62,0.23,4,101
09401,"Applesauce, canned, unsweetened, with added ascorbic acid",Fruits and Fruit Juices,88.22,42,0.17,0.10,11.27,1.1,9.39,0.24,2,74
09402,"Applesauce, canned, sweetened, with salt",Fruits and Fruit Juices,79.58,76,0.18,0.18,19.91,1.2,,0.14,28,61
09403,"Apricot nectar, canned, with added ascorbic acid",Fruits and Fruit Juices,84.87,56,0.37,0.09,14.39,0.6,,0.29,3,114
09404,"Grapefruit juice, pink, raw",Fruits and Fruit Juices,90.00,39,0.50,0.10,9.20,,,0.20,1,162
09407,"Peach nectar, canned, with added ascorbic acid",Fruits and Fruit Juices,85.64,54,0.27,0.02,13.92,0.6,,0.15,7,40
09408,"Pear nectar, canned, with added ascorbic acid",Fruits and Fruit Juices,84.01,60,0.11,0.01,15.76,0.6,,0.10,4,13
09409,"Pineapple juice, canned, unsweetened, with added ascorbic acid",Fruits and Fruit Juices,86.37,53,0.36,0.12,12.87,0.2,9.98,0.28,2,130
09410,"Apple juice, frozen concentrate, unsweetened, undiluted, with added ascorbic acid",Fruits and Fruit Juices,57.00,166,0.51,0.37,41.00,,38.83,1.12,25,448
09412,"Pears, raw, bartlett",Fruits and Fruit Juices,84.14,63,0.39,0.16,15.01,3.1,9.69,0.30,1,101
09413,"Pears, raw, red anjou",Fruits and Fruit Juices,84.24,62,0.33,0.14,14.94,3.0,9.54,0.35,1,123
09414,"Pears, raw, bosc",Fruits and Fruit Juices,83.18,67,0.36,0.09,16.10,3.1,10.23,0.28,1,122
09415,"Pears, raw, green anjou",Fruits and Fruit Juices,83.31,66,0.44,0.10,15.79,3.1,9.73,0.37,1,127
09420,"Jackfruit, canned, syrup pack",Fruits and Fruit Juices,75.28,92,0.36,0.14,23.94,0.9,,0.28,11,96
09421,"Dates, medjool",Fruits and Fruit Juices,21.32,277,1.81,0.15,74.97,6.7,66.47,1.74,1,696
09422,"Durian, raw or frozen",Fruits and Fruit Juices,64.99,147,1.47,5.33,27.09,3.8,,1.12,2,436
09423,Prune puree,Fruits and Fruit Juices,30.00,257,2.10,0.20,65.10,3.3,39.00,2.60,23,852
09426,Candied fruit,Fruits and Fruit Juices,16.70,322,0.34,0.07,82.74,1.6,80.68,0.14,98,56
09427,"Abiyuch, raw",Fruits and Fruit Juices,79.90,69,1.50,0.10,17.60,5.3,8.55,0.90,20,304
09428,"Rowal, raw",Fruits and Fruit Juices,71.40,111,2.30,2.00,23.90,6.2,14.10,0.40,4,131
09429,"Pineapple, raw, traditional varieties",Fruits and Fruit Juices,87.24,45,0.55,0.13,11.82,,8.29,0.27,1,125
09430,"Pineapple, raw, extra sweet variety",Fruits and Fruit Juices,85.66,51,0.53,0.11,13.50,1.4,10.32,0.20,1,108
09433,"Clementines, raw",Fruits and Fruit Juices,86.58,47,0.85,0.15,12.02,1.7,9.18,0.40,1,177
09434,"Guanabana nectar, canned",Fruits and Fruit Juices,84.72,59,0.11,0.17,14.93,0.1,13.07,0.08,8,25
09435,"Guava nectar, canned",Fruits and Fruit Juices,84.89,57,0.09,0.06,14.87,1.0,12.37,0.10,7,38
09436,"Mango nectar, canned",Fruits and Fruit Juices,86.63,51,0.11,0.06,13.12,0.3,12.45,0.08,5,24
09437,"Tamarind nectar, canned",Fruits and Fruit Juices,84.97,57,0.09,0.12,14.73,0.5,12.70,0.09,7,27
09442,"Pomegranate juice, bottled",Fruits and Fruit Juices,85.95,54,0.15,0.29,13.13,0.1,12.65,0.49,9,214
09443,"Juice, apple and grape blend, with added ascorbic acid",Fruits and Fruit Juices,87.05,50,0.16,0.12,12.46,0.2,10.92,0.22,7,96
09444,"Juice, apple, grape and pear blend, with added ascorbic acid and calcium",Fruits and Fruit Juices,86.44,52,0.17,0.12,12.96,0.2,9.95,0.31,5,89
09445,"Kiwifruit, gold, raw",Fruits and Fruit Juices,83.22,60,1.23,0.56,14.23,2.0,10.98,0.76,3,316
09446,"Plantains, green, fried",Fruits and Fruit Juices,36.08,309,1.50,11.81,49.17,3.5,3.63,1.44,2,482
09448,"Nance, canned, syrup, drained",Fruits and Fruit Juices,74.85,95,0.56,1.28,22.79,7.0,15.66,0.52,8,194
09449,"Nance, frozen, unsweetened",Fruits and Fruit Juices,80.64,73,0.66,1.16,16.97,7.5,8.31,0.57,3,244
09450,"Naranjilla (lulo) pulp, frozen, unsweetened",Fruits and Fruit Juices,93.05,25,0.44,0.22,5.90,1.1,3.74,0.39,4,200
09451,Horned melon (Kiwano),Fruits and Fruit Juices,88.97,44,1.78,1.26,7.56,,,0.44,2,123
09452,Orange Pineapple Juice Blend,Fruits and Fruit Juices,87.24,51,0.41,0.08,12.20,0.2,10.57,0.35,4,150
09500,"Apples, raw, red delicious, with skin",Fruits and Fruit Juices,85.33,59,0.27,0.20,14.06,2.3,10.48,0.14,1,104
09501,"Apples, raw, golden delicious, with skin",Fruits and Fruit Juices,85.81,57,0.28,0.15,13.60,2.4,10.04,0.16,2,100
09502,"Apples, raw, granny smith, with skin",Fruits and Fruit Juices,85.46,58,0.44,0.19,13.61,2.8,9.59,0.29,1,120
09503,"Apples, raw, gala, with skin",Fruits and Fruit Juices,85.76,57,0.25,0.12,13.68,2.3,10.37,0.20,1,108
09504,"Apples, raw, fuji, with skin",Fruits and Fruit Juices,84.16,63,0.20,0.18,15.22,2.1,11.68,0.24,1,109
10001,"Pork, fresh, carcass, separable lean and fat, raw",Pork Products,49.83,376,13.91,35.07,0.00,0.0,0.00,0.72,42,253
10002,"Pork, fresh, composite of trimmed retail cuts (leg, loin, shoulder), separable lean only, raw",Pork Products,73.17,134,21.20,4.86,0.00,0.0,0.00,1.00,59,363
10004,"Pork, fresh, backfat, raw",Pork Products,7.69,812,2.92,88.69,0.00,0.0,0.00,0.70,11,65
10005,"Pork, fresh, belly, raw",Pork Products,36.74,518,9.34,53.01,0.00,0.0,0.00,0.49,32,185
10008,"Pork, fresh, leg (ham), whole, separable lean and fat, raw",Pork Products,62.47,245,17.43,18.87,0.00,0.0,,0.88,47,315
10009,"Pork, fresh, leg (ham), whole, separable lean and fat, cooked, roasted",Pork Products,55.04,273,26.83,17.61,0.00,0.0,0.00,1.06,60,352
10010,"Pork, fresh, leg (ham), whole, separable lean only, raw",Pork Products,72.90,136,20.48,5.41,0.00,0.0,0.00,1.05,55,369
10011,"Pork, fresh, leg (ham), whole, separable lean only, cooked, roasted",Pork Products,60.66,211,29.41,9.44,0.00,0.0,0.00,1.11,64,373
10012,"Pork, fresh, leg (ham), rump half, separable lean and fat, raw",Pork Products,68.64,182,20.27,10.63,0.00,0.0,0.00,1.05,73,356
10013,"Pork, fresh, leg (ham), rump half, separable lean and fat, cooked, roasted",Pork Products,61.92,209,27.03,10.32,0.00,0.0,0.00,1.17,77,416
10014,"Pork, fresh, leg (ham), rump half, separable lean only, raw",Pork Products,74.78,120,21.81,2.93,0.00,0.0,0.00,1.12,76,359
10015,"Pork, fresh, leg (ham), rump half, separable lean only, cooked, roasted",Pork Products,65.75,165,28.86,4.62,0.00,0.0,0.00,1.24,80,425
10016,"Pork, fresh, leg (ham), shank half, separable lean and fat, raw",Pork Products,67.69,193,19.87,11.96,0.00,0.0,0.00,1.03,84,329
10017,"Pork, fresh, leg (ham), shank half, separable lean and fat, cooked, roasted",Pork Products,60.37,232,25.96,13.42,0.00,0.0,0.00,1.10,81,345
10018,"Pork, fresh, leg (ham), shank half, separable lean only, raw",Pork Products,74.88,119,21.66,2.95,0.00,0.0,0.00,1.11,90,329
10019,"Pork, fresh, leg (ham), shank half, separable lean only, cooked, roasted",Pork Products,65.28,175,28.69,5.83,0.00,0.0,0.00,1.20,84,376
10020,"Pork, fresh, loin, whole, separable lean and fat, raw",Pork Products,66.92,198,19.74,12.58,0.00,0.0,0.00,0.96,50,356
10021,"Pork, fresh, loin, whole, separable lean and fat, cooked, braised",Pork Products,58.27,239,27.23,13.62,0.00,0.0,0.00,1.35,48,374
10022,"Pork, fresh, loin, whole, separable lean and fat, cooked, broiled",Pork Products,57.87,242,27.32,13.92,0.00,0.0,0.00,1.35,62,423
10023,"Pork, fresh, loin, whole, separable lean and fat, cooked, roasted",Pork Products,57.51,248,27.09,14.65,0.00,0.0,0.00,1.21,59,408
10024,"Pork, fresh, loin, whole, separable lean only, raw",Pork Products,72.23,143,21.43,5.66,0.00,0.0,0.00,1.05,52,389
10025,"Pork, fresh, loin, whole, separable lean only, cooked, braised",Pork Products,61.40,204,28.57,9.12,0.00,0.0,0.00,1.40,50,387
10026,"Pork, fresh, loin, whole, separable lean only, cooked, broiled",Pork Products,60.72,210,28.57,9.80,0.00,0.0,0.00,1.40,64,438
10027,"Pork, fresh, loin, whole, separable lean only, cooked, roasted",Pork Products,61.02,209,28.62,9.63,0.00,0.0,0.00,1.25,58,425
10028,"Pork, fresh, loin, blade (chops or roasts), bone-in, separable lean and fat, raw",Pork Products,67.64,194,19.56,12.27,0.00,0.0,0.00,1.00,69,288
10029,"Pork, fresh, loin, blade (chops), bone-in, separable lean and fat, cooked, braised",Pork Products,57.32,255,26.54,15.71,0.00,0.0,0.00,1.13,69,259
10030,"Pork, fresh, loin, blade (chops), bone-in, separable lean and fat, cooked, broiled",Pork Products,61.45,231,23.72,14.35,0.00,0.0,0.00,1.16,74,315
10031,"Pork, fresh, loin, blade (roasts), bone-in, separable lean and fat, cooked, roasted",Pork Products,58.74,254,24.29,16.71,0.00,0.0,0.00,1.10,76,318
10032,"Pork, fresh, loin, blade (chops or roasts), bone-in, separable lean only, raw",Pork Products,72.84,143,21.22,5.84,0.00,0.0,0.00,1.07,73,313
10033,"Pork, fresh, loin, blade (chops), bone-in, separable lean only, cooked, braised",Pork Products,60.32,222,28.02,11.29,0.00,0.0,0.00,1.18,70,270
10034,"Pork, fresh, loin, blade (chops), bone-in, separable lean only, cooked, broiled",Pork Products,65.03,193,24.99,9.56,0.00,0.0,0.00,1.21,76,332
10035,"Pork, fresh, loin, blade (roasts), bone-in, separable lean only, cooked, roasted",Pork Products,62.24,217,25.70,11.89,0.00,0.0,0.00,1.14,78,337
10036,"Pork, fresh, loin, center loin (chops), bone-in, separable lean and fat, raw",Pork Products,69.70,170,20.71,9.03,0.00,0.0,0.00,0.96,55,343
10037,"Pork, fresh, loin, center loin (chops), bone-in, separable lean and fat, cooked, braised",Pork Products,58.04,242,28.21,13.51,0.00,0.0,0.00,1.22,73,273
10038,"Pork, fresh, loin, center loin (chops), bone-in, separable lean and fat, cooked, broiled",Pork Products,62.27,209,25.61,11.06,0.00,0.0,0.00,1.01,55,344
10039,"Pork, fresh, loin, center loin (roasts), bone-in, separable lean and fat, cooked, roasted",Pork Products,60.26,231,27.01,12.80,0.00,0.0,0.00,1.14,83,350
10040,"Pork, fresh, loin, center loin (chops), bone-in, separable lean only, raw",Pork Products,73.62,127,21.99,3.71,0.00,0.0,0.00,1.01,58,362
10041,"Pork, fresh, loin, center loin (chops), bone-in, separable lean only, cooked, braised",Pork Products,61.79,200,30.20,7.86,0.00,0.0,0.00,1.28,75,288
10042,"Pork, fresh, loin, center loin (chops), bone-in, separable lean only, cooked, broiled",Pork Products,65.01,180,26.76,7.29,0.00,0.0,0.00,1.05,56,356
10043,"Pork, fresh, loin, center loin (roasts), bone-in, separable lean only, cooked, roasted",Pork Products,63.65,194,28.58,7.95,0.00,0.0,0.00,1.19,86,370
10044,"Pork, fresh, loin, center rib (chops or roasts), bone-in, separable lean and fat, raw",Pork Products,67.83,186,20.28,11.04,0.00,0.0,0.00,0.95,56,337
10045,"Pork, fresh, loin, center rib (chops), bone-in, separable lean and fat, cooked, braised",Pork Products,56.85,261,26.66,16.28,0.00,0.0,0.00,1.07,70,259
10046,"Pork, fresh, loin, center rib (chops), bone-in, separable lean and fat, cooked, broiled",Pork Products,61.66,222,24.42,13.04,0.00,0.0,0.00,0.97,55,329
10047,"Pork, fresh, loin, center rib (roasts), bone-in, separable lean and fat, cooked, roasted",Pork Products,57.76,248,26.99,14.68,0.00,0.0,0.00,1.09,91,272
10048,"Pork, fresh, loin, center rib (chops or roasts), bone-in, separable lean only, raw",Pork Products,72.40,136,21.79,4.80,0.00,0.0,0.00,1.01,60,359
10049,"Pork, fresh, loin, center rib (chops), bone-in, separable lean only, cooked, braised",Pork Products,61.56,208,29.03,9.32,0.00,0.0,0.00,1.13,72,277
10050,"Pork, fresh, loin, center rib (chops), bone-in, separable lean only, cooked, broiled",Pork Products,65.14,186,25.79,8.36,0.00,0.0,0.00,1.02,57,343
10051,"Pork, fresh, loin, center rib (roasts), bone-in, separable lean only, cooked, roasted",Pork Products,61.44,206,28.82,9.21,0.00,0.0,0.00,1.14,95,287
10052,"Pork, fresh, loin, sirloin (chops or roasts), bone-in, separable lean and fat, raw",Pork Products,70.29,168,20.48,8.96,0.00,0.0,0.00,0.95,57,336
10053,"Pork, fresh, loin, sirloin (chops), bone-in, separable lean and fat, cooked, braised",Pork Products,58.88,234,28.81,12.31,0.00,0.0,0.00,1.20,58,400
10054,"Pork, fresh, loin, sirloin (chops), bone-in, separable lean and fat, cooked, broiled",Pork Products,60.58,222,26.96,11.82,0.00,0.0,0.00,1.21,86,363
10055,"Pork, fresh, loin, sirloin (roasts), bone-in, separable lean and fat, cooked, roasted",Pork Products,59.34,230,26.64,12.87,0.00,0.0,0.00,1.07,57,340
10056,"Pork, fresh, loin, sirloin (chops or roasts), bone-in, separable lean only, raw",Pork Products,73.98,129,21.65,4.02,0.00,0.0,0.00,1.00,59,353
10057,"Pork, fresh, loin, sirloin (chops), bone-in, separable lean only, cooked, braised",Pork Products,62.16,195,31.00,6.90,0.00,0.0,0.00,1.28,58,428
10058,"Pork, fresh, loin, sirloin (chops), bone-in, separable lean only, cooked, broiled",Pork Products,64.61,174,29.29,5.45,0.00,0.0,0.00,1.31,89,391
10059,"Pork, fresh, loin, sirloin (roasts), bone-in, separable lean only, cooked, roasted",Pork Products,61.74,204,27.78,9.44,0.00,0.0,0.00,1.12,59,352
10060,"Pork, fresh, loin, tenderloin, separable lean only, raw",Pork Products,76.00,109,20.95,2.17,0.00,0.0,0.00,1.03,53,399
10061,"Pork, fresh, loin, tenderloin, separable lean only, cooked, roasted",Pork Products,69.45,143,26.17,3.51,0.00,0.0,0.00,1.21,57,421
10062,"Pork, fresh, loin, top loin (chops), boneless, separable lean and fat, raw",Pork Products,70.38,155,21.55,6.94,0.00,0.0,0.00,0.97,48,373
10063,"Pork, fresh, loin, top loin (chops), boneless, separable lean and fat, cooked, braised",Pork Products,62.44,200,29.20,8.31,0.00,0.0,0.00,1.31,66,261
10064,"Pork, fresh, loin, top loin (chops), boneless, separable lean and fat, cooked, broiled",Pork Products,62.92,196,26.62,9.14,0.00,0.0,0.00,1.00,44,357
10065,"Pork, fresh, loin, top loin (roasts), boneless, separable lean and fat, cooked, roasted",Pork Products,63.76,192,26.45,8.82,0.00,0.0,0.00,0.98,46,349
10066,"Pork, fresh, loin, top loin (chops), boneless, separable lean only, raw",Pork Products,72.93,127,22.41,3.42,0.00,0.0,0.00,1.01,49,387
10067,"Pork, fresh, loin, top loin (chops), boneless, separable lean only, cooked, braised",Pork Products,65.14,170,30.54,4.34,0.00,0.0,0.00,1.36,67,269
10068,"Pork, fresh, loin, top loin (chops), boneless, separable lean only, cooked, broiled",Pork Products,65.11,173,27.58,6.08,0.00,0.0,0.00,1.03,45,367
10069,"Pork, fresh, loin, top loin (roasts), boneless, separable lean only, cooked, roasted",Pork Products,65.60,173,27.23,6.28,0.00,0.0,0.00,1.01,47,357
10070,"Pork, fresh, shoulder, whole, separable lean and fat, raw",Pork Products,64.02,236,17.18,17.99,0.00,0.0,0.00,0.88,65,302
10071,"Pork, fresh, shoulder, whole, separable lean and fat, cooked, roasted",Pork Products,54.80,292,23.28,21.39,0.00,0.0,0.00,1.11,68,329
10072,"Pork, fresh, shoulder, whole, separable lean only, raw",Pork Products,72.63,148,19.55,7.14,0.00,0.0,,1.02,76,341
10073,"Pork, fresh, shoulder, whole, separable lean only, cooked, roasted",Pork Products,60.64,230,25.33,13.54,0.00,0.0,0.00,1.18,75,346
10074,"Pork, fresh, shoulder, arm picnic, separable lean and fat, raw",Pork Products,68.34,193,18.71,12.51,0.00,0.0,0.00,0.98,84,413
10075,"Pork, fresh, shoulder, arm picnic, separable lean and fat, cooked, braised",Pork Products,60.03,235,24.88,14.33,0.00,0.0,0.00,1.08,96,357
10076,"Pork, fresh, shoulder, arm picnic, separable lean and fat, cooked, roasted",Pork Products,52.04,317,23.47,24.01,0.00,0.0,,0.99,70,325
10077,"Pork, fresh, shoulder, arm picnic, separable lean only, raw",Pork Products,75.51,120,20.26,3.77,0.00,0.0,0.00,1.05,90,427
10078,"Pork, fresh, shoulder, arm picnic, separable lean only, cooked, braised",Pork Products,63.59,194,26.76,8.87,0.00,0.0,0.00,1.15,100,382
10079,"Pork, fresh, shoulder, arm picnic, separable lean only, cooked, roasted",Pork Products,60.27,228,26.68,12.62,0.00,0.0,,1.06,80,351
10080,"Pork, fresh, shoulder, (Boston butt), blade (steaks), separable lean and fat, raw",Pork Products,69.18,186,17.42,12.36,0.00,0.0,0.00,0.83,61,318
10081,"Pork, fresh, shoulder, (Boston butt), blade (steaks), separable lean and fat, cooked, braised",Pork Products,54.95,267,25.07,17.69,0.00,0.0,0.00,0.82,58,305
10082,"Pork, fresh, shoulder, blade, boston (steaks), separable lean and fat, cooked, broiled",Pork Products,57.25,259,25.58,16.61,0.00,0.0,0.00,1.08,69,326
10083,"Pork, fresh, shoulder, blade, boston (roasts), separable lean and fat, cooked, roasted",Pork Products,57.47,269,23.11,18.86,0.00,0.0,0.00,1.23,67,332
10084,"Pork, fresh, shoulder, (Boston butt), blade (steaks), separable lean only, raw",Pork Products,74.31,132,18.73,5.71,0.00,0.0,0.00,0.88,65,339
10085,"Pork, fresh, shoulder, (Boston butt), blade (steaks), separable lean only, cooked, braised",Pork Products,58.00,233,26.57,13.20,0.00,0.0,0.00,0.85,60,318
10086,"Pork, fresh, shoulder, blade, boston (steaks), separable lean only, cooked, broiled",Pork Products,60.07,227,26.74,12.54,0.00,0.0,0.00,1.10,74,343
10087,"Pork, fresh, shoulder, blade, boston (roasts), separable lean only, cooked, roasted",Pork Products,60.94,232,24.21,14.30,0.00,0.0,0.00,1.27,88,427
10088,"Pork, fresh, spareribs, separable lean and fat, raw",Pork Products,59.75,277,15.47,23.40,0.00,0.0,0.00,0.67,81,242
10089,"Pork, fresh, spareribs, separable lean and fat, cooked, braised",Pork Products,40.42,397,29.06,30.30,0.00,0.0,0.00,1.12,93,320
10093,"Pork, fresh, composite of trimmed retail cuts (leg, loin, and shoulder), separable lean only, cooked",Pork Products,62.53,201,27.51,9.21,0.00,0.0,0.00,1.11,55,357
10100,"Pork, fresh, variety meats and by-products, ears, frozen, raw",Pork Products,61.25,234,22.45,15.10,0.60,0.0,,0.60,191,55
10101,"Pork, fresh, variety meats and by-products, ears, frozen, cooked, simmered",Pork Products,72.65,166,15.95,10.80,0.20,0.0,,0.40,167,40
10102,"Pork, fresh, variety meats and by-products, feet, raw",Pork Products,64.99,212,23.16,12.59,0.00,0.0,0.00,0.68,132,63
10103,"Pork, fresh, variety meats and by-products, heart, raw",Pork Products,76.21,118,17.27,4.36,1.33,0.0,0.00,0.84,56,294
10104,"Pork, fresh, variety meats and by-products, heart, cooked, braised",Pork Products,68.08,148,23.60,5.05,0.40,0.0,,1.00,35,206
10106,"Pork, fresh, variety meats and by-products, kidneys, raw",Pork Products,80.06,100,16.46,3.25,0.00,0.0,,1.17,121,229
10107,"Pork, fresh, variety meats and by-products, kidneys, cooked, braised",Pork Products,68.70,151,25.40,4.70,0.00,0.0,,1.30,80,143
10109,"Pork, fresh, variety meats and by-products, leaf fat, raw",Pork Products,4.09,857,1.76,94.16,0.00,0.0,,0.10,5,31
10110,"Pork, fresh, variety meats and by-products, liver, raw",Pork Products,71.06,134,21.39,3.65,2.47,0.0,,1.44,87,273
10111,"Pork, fresh, variety meats and by-products, liver, cooked, braised",Pork Products,64.32,165,26.02,4.40,3.76,0.0,,1.50,49,150
10120,"Pork, fresh, loin, blade (chops), bone-in, separable lean only, cooked, pan-fried",Pork Products,61.13,222,26.38,12.14,0.00,0.0,0.00,1.28,88,335
10121,"Pork, fresh, variety meats and by-products, tongue, raw",Pork Products,65.90,225,16.30,17.20,0.00,0.0,0.00,0.90,110,243
10122,"Pork, fresh, variety meats and by-products, tongue, cooked, braised",Pork Products,56.90,271,24.10,18.60,0.00,0.0,,0.80,109,237
10123,"Pork, cured, bacon, unprepared",Pork Products,44.24,417,12.62,39.69,1.28,0.0,1.00,2.17,662,198
10128,"Pork, cured, breakfast strips, raw or unheated",Pork Products,47.41,388,11.74,37.16,0.70,0.0,,3.00,987,204
10129,"Pork, cured, breakfast strips, cooked",Pork Products,26.93,459,28.95,36.70,1.05,0.0,0.00,6.37,2099,466
10130,"Canadian bacon, unprepared",Pork Products,72.31,111,20.24,2.76,1.29,0.0,0.90,3.40,743,703
10131,"Pork, cured, canadian-style bacon, grilled",Pork Products,61.70,185,24.24,8.44,1.35,0.0,0.00,4.27,1546,390
10132,"Pork, cured, feet, pickled",Pork Products,75.00,140,11.63,10.02,0.01,0.0,0.00,3.35,946,13
10134,"Pork, cured, ham, boneless, extra lean (approximately 5% fat), roasted",Pork Products,67.67,145,20.93,5.53,1.50,0.0,0.00,4.37,1203,287
10136,"Pork, cured, ham, boneless, regular (approximately 11% fat), roasted",Pork Products,64.54,178,22.62,9.02,0.00,0.0,0.00,3.96,1500,409
10137,"Pork, cured, ham, extra lean (approximately 4% fat), canned, unheated",Pork Products,73.52,120,18.49,4.56,0.00,0.0,0.00,3.63,1255,364
10138,"Pork, cured, ham, extra lean (approximately 4% fat), canned, roasted",Pork Products,69.45,136,21.16,4.88,0.52,0.0,,4.00,1135,348
10140,"Pork, cured, ham, regular (approximately 13% fat), canned, roasted",Pork Products,60.93,226,20.53,15.20,0.42,0.0,,2.93,941,357
10141,"Pork, cured, ham, center slice, country-style, separable lean only, raw",Pork Products,55.93,195,27.80,8.32,0.30,0.0,0.00,7.65,2695,510
10142,"Pork, cured, ham, center slice, separable lean and fat, unheated",Pork Products,63.46,203,20.17,12.90,0.05,0.0,,3.42,1386,337
10146,"Pork, cured, ham, patties, unheated",Pork Products,54.40,315,12.78,28.19,1.69,0.0,,2.93,1088,239
10149,"Pork, cured, ham, steak, boneless, extra lean, unheated",Pork Products,72.24,122,19.56,4.25,0.00,0.0,,3.95,1269,325
10150,"Pork, cured, ham, whole, separable lean and fat, unheated",Pork Products,59.71,246,18.49,18.52,0.06,0.0,0.00,3.23,1284,310
10152,"Pork, cured, ham, whole, separable lean only, unheated",Pork Products,68.26,147,22.32,5.71,0.05,0.0,0.00,3.66,1516,371
10153,"Pork, cured, ham, whole, separable lean only, roasted",Pork Products,65.78,157,25.05,5.50,0.00,0.0,0.00,3.74,1327,316
10165,"Pork, cured, salt pork, raw",Pork Products,11.00,748,5.05,80.50,0.00,0.0,0.00,3.65,2684,66
10168,"Pork, cured, shoulder, arm picnic, separable lean and fat, roasted",Pork Products,54.73,280,20.43,21.35,0.00,0.0,0.00,3.51,1072,258
10169,"Pork, cured, shoulder, arm picnic, separable lean only, roasted",Pork Products,63.86,170,24.94,7.04,0.00,0.0,0.00,4.16,1231,292
10170,"Pork, cured, shoulder, blade roll, separable lean and fat, unheated",Pork Products,59.13,269,16.47,21.98,0.00,0.0,,3.85,1250,295
10171,"Pork, cured, shoulder, blade roll, separable lean and fat, roasted",Pork Products,56.18,287,17.28,23.48,0.37,0.0,,2.70,973,194
10173,"Pork, fresh, variety meats and by-products, feet, cooked, simmered",Pork Products,62.85,238,21.94,16.05,0.00,0.0,0.00,0.66,73,33
10174,"Pork, fresh, variety meats and by-products, tail, raw",Pork Products,46.05,378,17.75,33.50,0.00,0.0,,0.50,63,349
10175,"Pork, fresh, variety meats and by-products, tail, cooked, simmered",Pork Products,46.70,396,17.00,35.80,0.00,0.0,,0.40,25,157
10176,"Pork, fresh, loin, center loin (chops), bone-in, separable lean only, cooked, pan-fried",Pork Products,62.17,195,29.56,7.66,0.00,0.0,0.00,1.33,99,378
10177,"Pork, fresh, loin, center rib (chops), bone-in, separable lean only, cooked, pan-fried",Pork Products,61.14,211,28.84,9.73,0.00,0.0,0.00,1.29,88,335
10178,"Pork, fresh, loin, blade (chops), bone-in, separable lean and fat, cooked, pan-fried",Pork Products,58.01,256,25.02,16.56,0.00,0.0,0.00,1.23,85,318
10179,"Pork, fresh, loin, center loin (chops), bone-in, separable lean and fat, cooked, pan-fried",Pork Products,58.39,238,27.63,13.32,0.00,0.0,0.00,1.26,94,353
10180,"Pork, fresh, loin, center rib (chops), bone-in, separable lean and fat, cooked, pan-fried",Pork Products,57.11,256,26.81,15.71,0.00,0.0,0.00,1.22,84,313
10181,"Pork, fresh, loin, top loin (chops), boneless, separable lean only, cooked, pan-fried",Pork Products,64.81,172,30.46,4.62,0.00,0.0,0.00,1.29,87,390
10182,"Pork, cured, ham, boneless, extra lean and regular, unheated",Pork Products,66.92,162,18.26,8.39,2.28,0.0,0.00,4.15,1278,297
10183,"Pork, cured, ham, boneless, extra lean and regular, roasted",Pork Products,65.75,165,21.97,7.66,0.50,0.0,0.00,4.11,1385,362
10184,"Pork, cured, ham, extra lean and regular, canned, unheated",Pork Products,71.12,144,17.97,7.46,0.00,0.0,0.00,3.57,1276,334
10185,"Pork, cured, ham, extra lean and regular, canned, roasted",Pork Products,66.52,167,20.94,8.43,0.49,0.0,0.00,3.63,1068,351
10186,"Pork, fresh, loin, top loin (chops), boneless, separable lean and fat, cooked, pan-fried",Pork Products,62.62,196,29.36,7.86,0.00,0.0,0.00,1.26,86,376
10187,"Pork, fresh, composite of trimmed retail cuts (leg, loin, shoulder, and spareribs), separable lean and fat, raw",Pork Products,65.11,216,18.95,14.95,0.00,0.0,,0.94,55,335
10188,"Pork, fresh, composite of trimmed retail cuts (leg, loin, shoulder, and spareribs), separable lean and fat, cooked",Pork Products,58.53,238,26.36,13.89,0.00,0.0,0.00,1.02,57,341
10192,"Pork, fresh, backribs, separable lean and fat, raw",Pork Products,63.47,224,19.07,16.33,0.00,0.0,0.00,1.03,87,247
10193,"Pork, fresh, backribs, separable lean and fat, cooked, roasted",Pork Products,54.82,292,23.01,21.51,0.00,0.0,0.00,1.04,94,240
10194,"Pork, fresh, loin, center rib (chops or roasts), boneless, separable lean and fat, raw",Pork Products,66.15,211,19.90,14.01,0.00,0.0,0.00,0.89,42,384
10195,"Pork, fresh, loin, center rib (chops), boneless, separable lean and fat, cooked, braised",Pork Products,58.15,255,26.29,15.79,0.00,0.0,,1.20,40,387
10196,"Pork, fresh, loin, center rib (chops), boneless, separable lean and fat, cooked, broiled",Pork Products,53.37,260,27.63,15.76,0.00,0.0,,1.12,62,401
10197,"Pork, fresh, loin, center rib (chops), boneless, separable lean and fat, cooked, pan-fried",Pork Products,56.34,273,25.82,18.05,0.00,0.0,0.00,1.18,50,428
10198,"Pork, fresh, loin, center rib (roasts), boneless, separable lean and fat, cooked, roasted",Pork Products,57.33,252,26.99,15.15,0.00,0.0,,1.11,48,346
10199,"Pork, fresh, loin, center rib (chops or roasts), boneless, separable lean only, raw",Pork Products,71.98,152,21.80,6.48,0.00,0.0,0.00,0.98,45,421
10200,"Pork, fresh, loin, center rib (chops), boneless, separable lean only, cooked, braised",Pork Products,62.25,211,27.95,10.14,0.00,0.0,0.00,1.26,41,405
10201,"Pork, fresh, loin, center rib (chops), boneless, separable lean only, cooked, broiled",Pork Products,56.95,216,29.46,10.05,0.00,0.0,,1.16,65,420
10202,"Pork, fresh, loin, center rib (chops), boneless, separable lean only, cooked, pan-fried",Pork Products,60.86,224,27.68,11.80,0.00,0.0,0.00,1.24,52,454
10203,"Pork, fresh, loin, center rib (roasts), boneless, separable lean only, cooked, roasted",Pork Products,60.61,214,28.81,10.13,0.00,0.0,,1.14,50,363
10204,"Pork, fresh, loin, country-style ribs, separable lean and fat, raw",Pork Products,68.22,189,19.34,11.82,0.00,0.0,0.00,0.95,63,318
10205,"Pork, fresh, loin, country-style ribs, separable lean and fat, cooked, braised",Pork Products,53.90,273,26.49,17.71,0.00,0.0,0.00,0.89,58,288
10206,"Pork, fresh, loin, country-style ribs, separable lean and fat, bone-in, cooked, roasted",Pork Products,48.38,359,21.75,29.46,0.00,0.0,0.00,0.99,52,322
10207,"Pork, fresh, loin, country-style ribs, separable lean only, raw",Pork Products,72.84,140,20.76,5.64,0.00,0.0,0.00,1.01,67,338
10208,"Pork, fresh, loin, country-style ribs, separable lean only, cooked, braised",Pork Products,56.16,247,27.74,14.26,0.00,0.0,0.00,0.92,60,297
10209,"Pork, fresh, loin, country-style ribs, separable lean only, bone-in, cooked, roasted",Pork Products,58.72,227,29.20,11.38,0.00,0.0,0.00,1.26,91,390
10210,"Pork, fresh, loin, sirloin (chops or roasts), boneless, separable lean and fat, raw",Pork Products,73.16,133,22.49,4.05,0.00,0.0,0.00,1.28,63,354
10211,"Pork, fresh, loin, sirloin (chops), boneless, separable lean and fat, cooked, braised",Pork Products,65.78,171,28.41,5.47,0.00,0.0,0.00,1.41,56,411
10212,"Pork, fresh, loin, sirloin (chops), boneless, separable lean and fat, cooked, broiled",Pork Products,65.98,170,28.19,5.53,0.00,0.0,0.00,1.37,65,420
10213,"Pork, fresh, loin, sirloin (roasts), boneless, separable lean and fat, cooked, roasted",Pork Products,62.82,192,29.62,7.32,0.00,0.0,0.00,1.42,66,398
10214,"Pork, fresh, loin, sirloin (chops or roasts), boneless, separable lean only, raw",Pork Products,74.30,121,22.81,2.59,0.00,0.0,0.00,1.30,63,354
10215,"Pork, fresh, loin, sirloin (chops), boneless, separable lean only, cooked, braised",Pork Products,66.41,163,28.75,4.50,0.00,0.0,0.00,1.43,56,416
10216,"Pork, fresh, loin, sirloin (chops), boneless, separable lean only, cooked, broiled",Pork Products,66.75,161,28.60,4.36,0.00,0.0,0.00,1.38,66,425
10217,"Pork, fresh, loin, sirloin (roasts), boneless, separable lean only, cooked, roasted",Pork Products,64.07,178,30.39,5.31,0.00,0.0,0.00,1.45,66,408
10218,"Pork, fresh, loin, tenderloin, separable lean and fat, raw",Pork Products,74.97,120,20.65,3.53,0.00,0.0,0.00,1.01,52,393
10219,"Pork, fresh, ground, raw",Pork Products,61.06,263,16.88,21.19,0.00,0.0,,0.87,56,287
10220,"Pork, fresh, ground, cooked",Pork Products,52.75,297,25.69,20.77,0.00,0.0,0.00,1.29,73,362
10221,"Pork, fresh, loin, tenderloin, separable lean and fat, cooked, broiled",Pork Products,61.09,201,29.86,8.11,0.00,0.0,,2.49,64,444
10222,"Pork, fresh, loin, tenderloin, separable lean and fat, cooked, roasted",Pork Products,69.11,147,26.04,3.96,0.00,0.0,0.00,1.20,57,419
10223,"Pork, fresh, loin, tenderloin, separable lean only, cooked, broiled",Pork Products,62.30,187,30.42,6.33,0.00,0.0,,2.55,65,451
10224,"Pork, fresh, loin, top loin (roasts), boneless, separable lean and fat, raw",Pork Products,70.14,166,21.34,8.33,0.00,0.0,0.00,0.97,47,358
10225,"Pork, fresh, loin, top loin (roasts), boneless, separable lean only, raw",Pork Products,73.28,132,22.39,4.06,0.00,0.0,0.00,1.01,49,374
10226,"Pork, fresh, composite of trimmed retail cuts (loin and shoulder blade), separable lean and fat, raw",Pork Products,69.13,177,20.08,10.14,0.00,0.0,0.00,0.95,54,345
10227,"Pork, fresh, composite of trimmed retail cuts (loin and shoulder blade), separable lean and fat, cooked",Pork Products,59.43,235,26.07,13.66,0.00,0.0,0.00,1.07,55,345
10228,"Pork, fresh, composite of trimmed retail cuts (loin and shoulder blade), separable lean only, raw",Pork Products,72.23,144,21.23,5.88,0.00,0.0,,1.05,54,384
10229,"Pork, fresh, composite of trimmed retail cuts (loin and shoulder blade), separable lean only, cooked",Pork Products,60.30,211,29.47,9.44,0.00,0.0,,1.19,57,377
10860,"Pork, cured, bacon, cooked, baked",Pork Products,12.52,548,35.73,43.27,1.35,0.0,0.00,7.12,2193,539
10861,"Pork, cured, bacon, cooked, microwaved",Pork Products,20.38,476,39.01,34.12,0.48,0.0,0.00,6.01,1783,525
10862,"Pork, cured, bacon, pre-sliced, cooked, pan-fried",Pork Products,23.65,468,33.92,35.09,1.70,0.0,0.00,5.64,1684,499
10864,"Pork, bacon, rendered fat, cooked",Pork Products,0.25,898,0.07,99.50,0.00,0.0,0.00,0.16,27,15
10865,"Pork, cured, ham -- water added, rump, bone-in, separable lean only, heated, roasted",Pork Products,70.92,121,21.41,3.56,0.87,0.0,0.84,3.23,1150,250
10866,"Pork, cured, ham -- water added, rump, bone-in, separable lean only, unheated",Pork Products,77.03,95,15.43,3.48,0.56,0.0,0.67,3.49,1170,205
10867,"Pork, cured, ham -- water added, shank, bone-in, separable lean only, heated, roasted",Pork Products,69.97,128,20.92,4.43,1.20,0.0,0.91,3.48,1060,241
10868,"Pork, cured, ham -- water added, slice, bone-in, separable lean only, heated, pan-broil",Pork Products,68.58,131,22.04,4.30,1.03,0.0,1.67,4.06,1374,289
10869,"Pork, cured, ham and water product, slice, bone-in, separable lean only, heated, pan-broil",Pork Products,70.21,122,20.90,3.63,1.35,0.0,1.10,3.90,1237,289
10870,"Pork, cured, ham and water product, slice, boneless, separable lean only, heated, pan-broil",Pork Products,71.20,123,15.09,5.06,4.38,0.0,4.69,4.27,1390,272
10871,"Pork, cured, ham and water product, whole, boneless, separable lean only, heated, roasted",Pork Products,72.11,123,13.88,5.46,4.49,0.0,4.61,4.05,1335,245
10872,"Pork, cured, ham and water product, whole, boneless, separable lean only, unheated",Pork Products,73.05,116,14.07,4.86,4.00,0.0,4.22,4.01,1310,268
10873,"Pork, cured, ham with natural juices, rump, bone-in, separable lean only, heated, roasted",Pork Products,67.90,137,24.14,4.25,0.43,0.0,0.48,3.29,861,511
10874,"Pork, cured, ham with natural juices, shank, bone-in, separable lean only, heated, roasted",Pork Products,66.98,145,24.95,4.97,0.01,0.0,0.34,3.09,820,458
10875,"Pork, cured, ham with natural juices, slice, bone-in, separable lean only, heated, pan-broil",Pork Products,65.87,150,27.75,4.38,0.00,0.0,0.00,2.85,835,358
10876,"Pork, cured, ham with natural juices, spiral slice, meat only, boneless, separable lean only, heated, roasted",Pork Products,69.47,126,22.56,3.78,1.08,0.0,1.08,3.77,986,349
10877,"Pork, cured, ham and water product, rump, bone-in, separable lean only, heated, roasted",Pork Products,69.53,131,21.28,4.70,1.00,0.0,1.15,3.49,1267,264
10878,"Pork, cured, ham -- water added, slice, boneless, separable lean only, heated, pan-broil",Pork Products,72.06,119,18.82,4.09,1.75,0.0,1.75,3.79,1223,337
10879,"Pork, cured, ham -- water added, whole, boneless, separable lean only, heated, roasted",Pork Products,72.58,117,17.99,4.39,1.38,0.0,1.57,3.66,1193,316
10880,"Pork, cured, ham -- water added, whole, boneless, separable lean only, unheated",Pork Products,73.95,110,17.34,3.97,1.18,0.0,1.45,3.56,1141,317
10881,"Pork, cured, ham and water product, shank, bone-in, separable lean only, heated, roasted",Pork Products,69.23,132,21.69,4.45,1.20,0.0,1.26,3.44,1045,224
10882,"Pork, cured, ham with natural juices, slice, boneless, separable lean only, heated, pan-broil",Pork Products,71.10,116,20.95,3.16,0.99,0.0,1.05,3.81,1163,364
10883,"Pork, cured, ham with natural juices, whole, boneless, separable lean only, heated, roasted",Pork Products,71.71,113,20.57,3.01,0.84,0.0,0.81,3.87,1180,367
10884,"Pork, cured, ham with natural juices, whole, boneless, separable lean only, unheated",Pork Products,72.85,110,19.44,3.21,0.95,0.0,1.03,3.56,1098,347
10885,"Pork, cured, ham -- water added, shank, bone-in, separable lean only, unheated",Pork Products,76.53,91,18.65,1.87,0.00,0.0,0.71,3.09,1040,229
10886,"Pork, cured, ham -- water added, slice, bone-in, separable lean only, unheated",Pork Products,76.75,95,17.38,2.29,1.23,0.0,1.23,3.26,1090,221
10887,"Pork, cured, ham and water product, rump, bone-in, separable lean only, unheated",Pork Products,74.32,107,17.93,3.38,1.24,0.0,0.97,3.14,1070,221
10888,"Pork, cured, ham and water product, slice, bone-in, separable lean only, unheated",Pork Products,75.54,103,14.47,3.78,2.82,0.0,0.91,3.39,1160,209
10889,"Pork, cured, ham and water product, shank, bone-in, unheated, separable lean only",Pork Products,73.97,113,17.53,4.18,1.20,0.0,1.06,3.11,1090,234
10890,"Pork, cured, ham with natural juices, rump, bone-in, separable lean only, unheated",Pork Products,70.80,122,22.71,3.47,0.06,0.0,0.43,2.96,893,303
10891,"Pork, cured, ham with natural juices, shank, bone-in, separable lean only, unheated",Pork Products,70.50,130,25.11,3.33,0.00,0.0,0.30,2.63,809,299
10892,"Pork, cured, ham with natural juices, slice, bone-in, separable lean only, unheated",Pork Products,70.29,123,24.34,2.87,0.00,0.0,0.00,2.80,861,300
10893,"Pork, cured, ham with natural juices, spiral slice, boneless, separable lean only, unheated",Pork Products,72.46,109,19.25,3.26,1.22,0.0,1.22,4.39,895,317
10898,"Pork, pickled pork hocks",Pork Products,68.02,171,19.11,10.54,0.00,0.0,0.00,2.76,1050,47
10899,"Pork, cured, ham, slice, bone-in, separable lean only, heated, pan-broil",Pork Products,65.33,148,27.18,4.09,0.74,0.0,0.74,3.17,870,427
10900,"Pork, cured, ham with natural juices, whole, boneless, separable lean and fat, unheated",Pork Products,72.68,112,19.38,3.43,0.95,0.0,1.02,3.56,1096,346
10901,"Pork, cured, ham with natural juices, spiral slice, boneless, separable lean and fat, unheated",Pork Products,70.62,129,18.66,5.75,0.69,0.0,1.18,4.27,881,310
10902,"Pork, cured, ham with natural juices, slice, bone-in, separable lean and fat, unheated",Pork Products,67.16,159,22.82,7.40,0.17,0.0,0.04,2.73,839,289
10903,"Pork, cured, ham with natural juices, shank, bone-in, separable lean and fat, unheated",Pork Products,65.04,191,22.35,11.11,0.29,0.0,0.32,2.53,779,279
10904,"Pork, cured, ham with natural juices, rump, bone-in, separable lean and fat, unheated",Pork Products,63.86,200,19.70,13.26,0.42,0.0,0.43,2.76,838,278
10905,"Pork, cured, ham and water product, whole, boneless, separable lean and fat, unheated",Pork Products,72.96,117,14.05,4.99,4.00,0.0,4.21,4.00,1308,267
10906,"Pork, cured, ham and water product, slice, bone-in, separable lean and fat, unheated",Pork Products,71.07,149,13.69,9.29,2.72,0.0,0.85,3.23,1099,205
10907,"Pork, cured, ham and water product, shank, bone-in, separable lean and fat, unheated",Pork Products,61.56,243,14.28,20.00,1.42,0.0,0.86,2.74,936,215
10908,"Pork, cured, ham and water product, rump, bone-in, separable lean and fat, unheated",Pork Products,67.50,179,16.09,12.13,1.35,0.0,0.88,2.93,990,213
10909,"Pork, cured, ham -- water added, whole, boneless, separable lean and fat, unheated",Pork Products,72.85,121,17.06,5.38,1.20,0.0,1.42,3.52,1126,312
10910,"Pork, cured, ham -- water added, slice, bone-in, separable lean and fat, unheated",Pork Products,69.88,164,15.73,10.77,1.10,0.0,1.10,3.04,1011,213
10911,"Pork, cured, ham -- water added, shank, bone-in, separable lean and fat, unheated",Pork Products,69.21,167,16.65,11.02,0.33,0.0,0.66,2.89,964,219
10912,"Pork, cured, ham -- water added, rump, bone-in, separable lean and fat, unheated",Pork Products,69.49,172,13.99,12.50,0.80,0.0,0.62,3.22,1069,199
10913,"Pork, cured, ham -- water added, rump, bone-in, separable lean and fat, heated, roasted",Pork Products,67.23,161,20.10,8.56,0.99,0.0,0.78,3.13,1101,244
10914,"Pork, cured, ham -- water added, shank, bone-in, separable lean and fat, heated, roasted",Pork Products,63.43,200,18.62,13.37,1.35,0.0,0.79,3.24,988,232
10915,"Pork, cured, ham -- water added, slice, bone-in, separable lean and fat, heated, pan-broil",Pork Products,65.48,166,20.80,8.73,1.12,0.0,1.54,3.89,1309,280
10916,"Pork, cured, ham -- water added, slice, boneless, separable lean and fat, heated, pan-broil",Pork Products,71.32,125,18.62,5.05,1.26,0.0,1.72,3.76,1212,334
10917,"Pork, cured, ham -- water added, whole, boneless, separable lean and fat, heated, roasted",Pork Products,71.72,126,17.77,5.48,1.39,0.0,1.54,3.63,1181,313
10918,"Pork, cured, ham and water product, rump, bone-in, separable lean and fat, heated, roasted",Pork Products,64.60,186,19.46,11.48,1.15,0.0,1.03,3.30,1181,254
10919,"Pork, cured, ham and water product, shank, bone-in, separable lean and fat, heated, roasted",Pork Products,60.03,234,18.17,17.29,1.42,0.0,0.99,3.10,945,216
10920,"Pork, cured, ham and water product, slice, bone-in, separable lean and fat, heated, pan-broil",Pork Products,67.21,155,19.85,7.78,1.41,0.0,1.03,3.75,1188,281
10921,"Pork, cured, ham and water product, slice, boneless, separable lean and fat, heated, pan-broil",Pork Products,71.14,124,15.08,5.13,4.38,0.0,4.69,4.27,1389,272
10922,"Pork, cured, ham and water product, whole, boneless, separable lean and fat, heated, roasted",Pork Products,72.11,123,13.88,5.46,4.49,0.0,4.61,4.05,1335,245
10923,"Pork, cured, ham with natural juices, rump, bone-in, separable lean and fat, heated, roasted",Pork Products,64.38,177,22.47,9.39,0.60,0.0,0.45,3.17,841,477
10924,"Pork, cured, ham with natural juices, shank, bone-in, separable lean and fat, heated, roasted",Pork Products,62.94,191,22.88,10.93,0.26,0.0,0.33,2.98,801,424
10925,"Pork, cured, ham with natural juices, slice, bone-in, separable lean and fat, heated, pan-broil",Pork Products,63.36,180,26.18,8.28,0.17,0.0,0.02,2.80,821,344
10926,"Pork, cured, ham with natural juices, slice, boneless, separable lean and fat, heated, pan-broil",Pork Products,70.93,118,20.89,3.40,0.99,0.0,1.04,3.80,1160,363
10927,"Pork, cured, ham with natural juices, spiral slice, boneless, separable lean and fat, heated, roasted",Pork Products,68.53,139,22.18,5.10,1.06,0.0,1.06,3.73,977,345
10928,"Pork, cured, ham with natural juices, whole, boneless, separable lean and fat, heated, roasted",Pork Products,71.62,114,20.54,3.13,0.84,0.0,0.81,3.86,1179,367
10929,"Pork, cured, ham, rump, bone-in, separable lean and fat, heated, roasted",Pork Products,63.82,177,23.95,8.88,0.37,0.0,0.64,2.98,826,370
10931,"Pork, cured, ham, rump, bone-in, separable lean only, heated, roasted",Pork Products,67.68,132,26.02,3.07,0.15,0.0,0.68,3.09,846,394
10932,"Pork, cured, ham, rump, bone-in, separable lean only, unheated",Pork Products,69.56,125,24.46,2.92,0.32,0.0,0.00,2.74,737,385
10933,"Pork, cured, ham, shank, bone-in, separable lean only, heated, roasted",Pork Products,67.46,139,26.49,3.68,0.00,0.0,0.68,2.88,828,378
10934,"Pork, cured, ham, shank, bone-in, separable lean only, unheated",Pork Products,69.79,125,23.79,3.19,0.18,0.0,0.00,3.05,846,364
10935,"Pork, cured, ham, shank, bone-in, separable lean and fat, heated, roasted",Pork Products,63.67,183,24.39,9.35,0.24,0.0,0.64,2.80,810,356
10936,"Pork, cured, ham, shank, bone-in, separable lean and fat, unheated",Pork Products,65.23,177,21.61,9.85,0.41,0.0,0.06,2.91,816,339
10937,"Pork, cured, ham, slice, bone-in, separable lean and fat, heated, pan-broil",Pork Products,62.57,180,25.48,8.48,0.39,0.0,0.70,3.08,852,405
10938,"Pork, cured, ham, slice, bone-in, separable lean only, unheated",Pork Products,69.97,130,24.36,3.59,0.00,0.0,0.00,2.79,760,370
10939,"Pork, cured, ham, slice, bone-in, separable lean and fat, unheated",Pork Products,66.09,173,22.45,9.17,0.21,0.0,0.05,2.70,744,348
10940,"Pork, fresh, spareribs, separable lean and fat, cooked, roasted",Pork Products,48.11,361,20.89,30.86,0.00,0.0,0.00,0.82,91,265
10955,"Pork, cured, ham, rump, bone-in, separable lean and fat, unheated",Pork Products,65.19,176,22.27,9.38,0.52,0.0,0.06,2.65,722,358
10956,"Pork, loin, leg cap steak, boneless, separable lean and fat, cooked, broiled",Pork Products,68.72,158,27.57,4.41,0.00,0.0,0.00,1.07,76,366
10957,"Pork, Leg Cap Steak, boneless, separable lean and fat, raw",Pork Products,75.18,123,21.64,3.39,0.00,0.0,0.00,1.02,73,365
10958,"Pork, Shoulder breast, boneless, separable lean and fat, raw",Pork Products,74.37,127,22.54,3.40,0.00,0.0,0.00,1.07,54,378
10959,"Pork, Shoulder breast, boneless, separable lean and fat, cooked, broiled",Pork Products,67.26,162,28.47,4.49,0.00,0.0,0.00,1.13,54,364
10960,"Pork, shoulder, petite tender, boneless, separable lean and fat, cooked, broiled",Pork Products,68.70,155,27.47,4.23,0.00,0.0,0.00,1.21,53,415
10961,"Pork, Shoulder petite tender, boneless, separable lean and fat, raw",Pork Products,74.57,128,21.65,3.91,0.00,0.0,0.00,1.08,50,391
10962,"Pork, Leg sirloin tip roast, boneless, separable lean and fat, cooked, braised",Pork Products,66.99,156,31.11,2.56,0.00,0.0,0.00,1.14,43,363
10963,"Pork, Leg sirloin tip roast, boneless, separable lean and fat, raw",Pork Products,75.88,113,22.88,1.71,0.00,0.0,0.00,1.11,50,399
10972,"Pork, ground, 84% lean / 16% fat, raw",Pork Products,64.67,218,17.99,16.00,0.44,0.0,0.00,0.91,68,244
10973,"Pork, ground, 96% lean / 4% fat, raw",Pork Products,73.62,121,21.10,4.00,0.21,0.0,0.00,1.07,67,310
10974,"Pork, ground, 72% lean / 28% fat, cooked, crumbles",Pork Products,41.67,393,22.83,32.93,1.39,0.0,0.00,1.18,94,280
10975,"Pork, ground, 84% lean / 16% fat, cooked, crumbles",Pork Products,51.35,289,26.69,20.04,0.58,0.0,0.00,1.34,89,354
10976,"Pork, ground, 96% lean / 4% fat, cooked, crumbles",Pork Products,61.03,187,30.55,7.15,0.00,0.0,0.00,1.49,84,428
10977,"Pork, ground, 72% lean / 28% fat, cooked, pan-broiled",Pork Products,43.85,377,22.59,31.42,1.08,0.0,0.00,1.05,91,275
10978,"Pork, ground, 84% lean / 16% fat, cooked, pan-broiled",Pork Products,51.97,301,27.14,21.39,0.00,0.0,0.00,1.26,89,345
10979,"Pork, ground, 96% lean / 4% fat, cooked, pan-broiled",Pork Products,60.08,185,31.69,6.20,0.57,0.0,0.00,1.47,88,415
10982,"Pork, fresh, loin, blade (chops or roasts), boneless, separable lean only, raw",Pork Products,72.94,123,21.35,3.78,0.82,0.0,0.00,1.11,65,375
10983,"Pork, fresh, loin, blade (roasts), boneless, separable lean only, cooked, roasted",Pork Products,64.76,175,27.58,7.14,0.00,0.0,0.00,1.24,68,457
10984,"Pork, fresh, loin, blade (chops), boneless, separable lean only, boneless, cooked, broiled",Pork Products,65.00,169,26.14,6.74,0.89,0.0,0.00,1.22,58,430
10985,"Pork, fresh, loin, country-style ribs, separable lean only, boneless, cooked, broiled",Pork Products,59.98,216,27.83,11.65,0.00,0.0,0.00,1.10,58,431
10986,"Pork, fresh, loin, country-style ribs, separable lean only, bone-in, cooked, broiled",Pork Products,59.98,216,27.83,11.65,0.00,0.0,0.00,1.10,84,370
10987,"Pork, fresh, loin, country-style ribs, separable lean only, boneless, cooked, roasted",Pork Products,58.72,219,29.20,11.38,0.00,0.0,0.00,1.26,72,486
10988,"Pork, fresh, blade, (chops), boneless, separable lean and fat, cooked, broiled",Pork Products,62.14,202,24.73,11.13,0.83,0.0,0.00,1.16,58,407
10989,"Pork, fresh, loin, blade (chops or roasts), boneless, separable lean and fat only, raw",Pork Products,69.70,157,20.54,7.94,0.76,0.0,0.00,1.07,64,372
10990,"Pork, fresh, loin, blade (roasts), boneless, separable lean and fat, cooked, roasted",Pork Products,62.69,199,26.48,10.32,0.00,0.0,0.00,1.20,67,439
10991,"Pork, fresh, loin, country-style ribs, separable lean and fat, boneless, cooked, broiled",Pork Products,57.45,247,26.28,15.73,0.00,0.0,0.00,1.05,58,408
10992,"Pork, fresh, loin, country-style ribs, separable lean and fat, bone-in, cooked, broiled",Pork Products,56.32,260,25.58,17.56,0.00,0.0,0.00,1.02,81,344
10993,"Pork, fresh, loin, country-style ribs, separable lean and fat, boneless, cooked, roasted",Pork Products,54.61,270,26.40,18.31,0.00,0.0,0.00,1.16,70,441
10994,"Bacon, pre-sliced, reduced/low sodium, unprepared",Pork Products,45.01,407,12.53,39.27,0.79,0.0,0.83,2.40,470,506
10998,"Canadian bacon, cooked, pan-fried",Pork Products,62.65,146,27.97,2.88,1.92,0.0,1.20,4.57,1020,945
11001,"Alfalfa seeds, sprouted, raw",Vegetables and Vegetable Products,92.82,23,3.99,0.69,2.10,1.9,0.18,0.40,6,79
11003,"Amaranth leaves, raw",Vegetables and Vegetable Products,91.69,23,2.46,0.33,4.02,,,1.50,20,611
11004,"Amaranth leaves, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.49,21,2.11,0.18,4.11,,,2.11,21,641
11005,"Arrowhead, raw",Vegetables and Vegetable Products,72.48,99,5.33,0.29,20.23,,,1.67,22,922
11006,"Arrowhead, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,77.08,78,4.49,0.10,16.14,,,2.19,18,881
11007,"Artichokes, (globe or french), raw",Vegetables and Vegetable Products,84.94,47,3.27,0.15,10.51,5.4,0.99,1.13,94,370
11008,"Artichokes, (globe or french), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,84.08,53,2.89,0.34,11.95,8.6,0.99,0.74,60,286
11009,"Artichokes, (globe or french), frozen, unprepared",Vegetables and Vegetable Products,88.59,38,2.63,0.43,7.75,3.9,,0.60,47,248
11010,"Artichokes, (globe or french), frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,86.50,45,3.11,0.50,9.18,4.6,0.84,0.71,53,264
11011,"Asparagus, raw",Vegetables and Vegetable Products,93.22,20,2.20,0.12,3.88,2.1,1.88,0.58,2,202
11012,"Asparagus, cooked, boiled, drained",Vegetables and Vegetable Products,92.63,22,2.40,0.22,4.11,2.0,1.30,0.63,14,224
11013,"Asparagus, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,94.32,15,1.80,0.18,2.48,1.0,,1.22,284,172
11015,"Asparagus, canned, drained solids",Vegetables and Vegetable Products,93.98,19,2.14,0.65,2.46,1.6,1.06,0.77,287,172
11018,"Asparagus, frozen, unprepared",Vegetables and Vegetable Products,91.82,24,3.23,0.23,4.10,1.9,,0.62,8,253
11019,"Asparagus, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.10,18,2.95,0.42,1.92,1.6,0.32,0.61,3,172
11022,"Balsam-pear (bitter gourd), leafy tips, raw",Vegetables and Vegetable Products,89.25,30,5.30,0.69,3.29,,,1.47,11,608
11023,"Balsam-pear (bitter gourd), leafy tips, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.69,34,3.60,0.20,6.68,1.9,1.04,0.83,13,602
11024,"Balsam-pear (bitter gourd), pods, raw",Vegetables and Vegetable Products,94.03,17,1.00,0.17,3.70,2.8,,1.10,5,296
11025,"Balsam-pear (bitter gourd), pods, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.95,19,0.84,0.18,4.32,2.0,1.95,0.71,6,319
11026,"Bamboo shoots, raw",Vegetables and Vegetable Products,91.00,27,2.60,0.30,5.20,2.2,3.00,0.90,4,533
11027,"Bamboo shoots, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.92,12,1.53,0.22,1.92,1.0,,0.41,4,533
11028,"Bamboo shoots, canned, drained solids",Vegetables and Vegetable Products,94.32,19,1.72,0.40,3.22,1.4,1.89,0.34,7,80
11029,"Beans, kidney, mature seeds, sprouted, raw",Vegetables and Vegetable Products,90.70,29,4.20,0.50,4.10,,,0.50,6,187
11030,"Beans, kidney, mature seeds, sprouted, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.30,33,4.83,0.58,4.72,,,0.58,7,194
11031,"Lima beans, immature seeds, raw",Vegetables and Vegetable Products,70.24,113,6.84,0.86,20.17,4.9,1.48,1.89,8,467
11032,"Lima beans, immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,67.17,123,6.81,0.32,23.64,5.3,1.63,2.06,17,570
11033,"Beans, lima, immature seeds, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,81.17,71,4.07,0.29,13.33,3.6,,1.14,252,285
11037,"Lima beans, immature seeds, frozen, fordhook, unprepared",Vegetables and Vegetable Products,72.05,106,6.40,0.35,19.83,5.5,1.39,1.37,58,478
11038,"Lima beans, immature seeds, frozen, fordhook, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,72.98,103,6.07,0.34,19.32,5.8,1.34,1.30,69,304
11039,"Lima beans, immature seeds, frozen, baby, unprepared",Vegetables and Vegetable Products,65.46,132,7.59,0.44,25.14,6.0,,1.37,52,452
11040,"Lima beans, immature seeds, frozen, baby, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,72.35,105,6.65,0.30,19.45,6.0,1.37,1.25,29,411
11043,"Mung beans, mature seeds, sprouted, raw",Vegetables and Vegetable Products,90.40,30,3.04,0.18,5.94,1.8,4.13,0.44,6,149
11044,"Mung beans, mature seeds, sprouted, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.39,21,2.03,0.09,4.19,0.8,2.84,0.30,10,101
11045,"Mung beans, mature seeds, sprouted, cooked, stir-fried",Vegetables and Vegetable Products,84.30,50,4.30,0.21,10.59,1.9,,0.60,9,219
11046,"Beans, navy, mature seeds, sprouted, raw",Vegetables and Vegetable Products,79.15,67,6.15,0.70,13.05,,,0.95,13,307
11047,"Beans, navy, mature seeds, sprouted, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,76.02,78,7.07,0.81,15.01,,,1.09,14,317
11048,"Beans, pinto, immature seeds, frozen, unprepared",Vegetables and Vegetable Products,55.80,170,9.80,0.50,32.50,5.7,,1.40,92,756
11049,"Beans, pinto, immature seeds, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,58.01,162,9.31,0.48,30.88,8.6,,1.33,83,646
11050,"Beans, shellie, canned, solids and liquids",Vegetables and Vegetable Products,90.69,30,1.76,0.19,6.19,3.4,0.63,1.17,334,109
11052,"Beans, snap, green, raw",Vegetables and Vegetable Products,90.32,31,1.83,0.22,6.97,2.7,3.26,0.66,6,211
11053,"Beans, snap, green, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.22,35,1.89,0.28,7.88,3.2,1.55,0.73,1,146
11054,"Beans, snap, green variety, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,95.06,15,0.72,0.17,3.27,1.5,1.25,0.77,192,92
11056,"Beans, snap, green, canned, regular pack, drained solids",Vegetables and Vegetable Products,93.12,25,1.26,0.37,4.25,2.5,1.31,1.00,246,106
11058,"Beans, snap, canned, all styles, seasoned, solids and liquids",Vegetables and Vegetable Products,94.30,16,0.83,0.20,3.49,1.5,,1.18,373,93
11060,"Beans, snap, green, frozen, all styles, unprepared",Vegetables and Vegetable Products,89.93,39,1.79,0.21,7.54,2.6,2.21,0.53,3,186
11061,"Beans, snap, green, frozen, cooked, boiled, drained without salt",Vegetables and Vegetable Products,91.42,28,1.49,0.17,6.45,3.0,1.23,0.47,1,159
11062,"Beans, snap, green, frozen, all styles, microwaved",Vegetables and Vegetable Products,89.93,40,1.98,0.41,6.98,3.4,2.60,0.70,3,237
11063,"Beans, snap, green, microwaved",Vegetables and Vegetable Products,90.04,39,2.31,0.50,6.41,3.4,3.22,0.74,3,323
11080,"Beets, raw",Vegetables and Vegetable Products,87.58,43,1.61,0.17,9.56,2.8,6.76,1.08,78,325
11081,"Beets, cooked, boiled, drained",Vegetables and Vegetable Products,87.06,44,1.68,0.18,9.96,2.0,7.96,1.12,77,305
11082,"Beets, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,91.30,30,0.73,0.09,7.14,1.2,6.53,0.74,143,159
11084,"Beets, canned, drained solids",Vegetables and Vegetable Products,90.96,31,0.91,0.14,7.21,1.8,5.51,0.78,194,148
11086,"Beet greens, raw",Vegetables and Vegetable Products,91.02,22,2.20,0.13,4.33,3.7,0.50,2.33,226,762
11087,"Beet greens, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.13,27,2.57,0.20,5.46,2.9,0.60,2.64,241,909
11088,"Broadbeans, immature seeds, raw",Vegetables and Vegetable Products,81.00,72,5.60,0.60,11.70,4.2,,1.10,50,250
11089,"Broadbeans, immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,83.70,62,4.80,0.50,10.10,3.6,,0.90,41,193
11090,"Broccoli, raw",Vegetables and Vegetable Products,89.30,34,2.82,0.37,6.64,2.6,1.70,0.87,33,316
11091,"Broccoli, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.25,35,2.38,0.41,7.18,3.3,1.39,0.77,41,293
11092,"Broccoli, frozen, chopped, unprepared",Vegetables and Vegetable Products,91.46,26,2.81,0.29,4.78,3.0,1.35,0.66,24,212
11093,"Broccoli, frozen, chopped, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.72,28,3.10,0.12,5.35,3.0,1.47,0.71,11,142
11094,"Broccoli, frozen, spears, unprepared",Vegetables and Vegetable Products,90.55,29,3.06,0.34,5.35,3.0,1.47,0.70,17,250
11095,"Broccoli, frozen, spears, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.72,28,3.10,0.11,5.36,3.0,1.47,0.71,24,180
11096,"Broccoli raab, raw",Vegetables and Vegetable Products,92.55,22,3.17,0.49,2.85,2.7,0.38,0.93,33,196
11097,"Broccoli raab, cooked",Vegetables and Vegetable Products,91.41,33,3.83,0.52,3.12,2.8,0.62,1.11,56,343
11098,"Brussels sprouts, raw",Vegetables and Vegetable Products,86.00,43,3.38,0.30,8.95,3.8,2.20,1.37,25,389
11099,"Brussels sprouts, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.90,36,2.55,0.50,7.10,2.6,1.74,0.95,21,317
11100,"Brussels sprouts, frozen, unprepared",Vegetables and Vegetable Products,87.07,41,3.78,0.41,7.86,3.8,,0.88,10,370
11101,"Brussels sprouts, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,86.74,42,3.64,0.39,8.32,4.1,2.08,0.91,15,290
11104,"Burdock root, raw",Vegetables and Vegetable Products,80.09,72,1.53,0.15,17.34,3.3,2.90,0.89,5,308
11105,"Burdock root, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,75.64,88,2.09,0.14,21.15,1.8,3.55,0.98,4,360
11106,"Butterbur, (fuki), raw",Vegetables and Vegetable Products,94.50,14,0.39,0.04,3.61,,,1.46,7,655
11107,"Butterbur, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,96.70,8,0.23,0.02,2.16,,,0.88,4,354
11108,"Butterbur, canned",Vegetables and Vegetable Products,97.92,3,0.11,0.13,0.38,,,1.46,4,12
11109,"Cabbage, raw",Vegetables and Vegetable Products,92.18,25,1.28,0.10,5.80,2.5,3.20,0.64,18,170
11110,"Cabbage, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.57,23,1.27,0.06,5.51,1.9,2.79,0.59,8,196
11112,"Cabbage, red, raw",Vegetables and Vegetable Products,90.39,31,1.43,0.16,7.37,2.1,3.83,0.64,27,243
11113,"Cabbage, red, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.84,29,1.51,0.09,6.94,2.6,3.32,0.62,28,262
11114,"Cabbage, savoy, raw",Vegetables and Vegetable Products,91.00,27,2.00,0.10,6.10,3.1,2.27,0.80,28,230
11115,"Cabbage, savoy, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.00,24,1.80,0.09,5.41,2.8,,0.70,24,184
11116,"Cabbage, chinese (pak-choi), raw",Vegetables and Vegetable Products,95.32,13,1.50,0.20,2.18,1.0,1.18,0.80,65,252
11117,"Cabbage, chinese (pak-choi), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.55,12,1.56,0.16,1.78,1.0,0.83,0.95,34,371
11119,"Cabbage, chinese (pe-tsai), raw",Vegetables and Vegetable Products,94.39,16,1.20,0.20,3.23,1.2,1.41,0.98,9,238
11120,"Cabbage, chinese (pe-tsai), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.24,14,1.50,0.17,2.41,1.7,,0.68,9,225
11122,"Cardoon, raw",Vegetables and Vegetable Products,94.00,17,0.70,0.10,4.07,1.6,,1.13,170,400
11123,"Cardoon, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.46,22,0.76,0.11,5.33,1.7,,0.34,176,392
11124,"Carrots, raw",Vegetables and Vegetable Products,88.29,41,0.93,0.24,9.58,2.8,4.74,0.97,69,320
11125,"Carrots, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.17,35,0.76,0.18,8.22,3.0,3.45,0.67,58,235
11126,"Carrots, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,92.99,23,0.58,0.14,5.37,1.8,2.46,0.92,240,173
11128,"Carrots, canned, regular pack, drained solids",Vegetables and Vegetable Products,92.95,25,0.64,0.19,5.54,1.5,2.48,0.68,242,179
11130,"Carrots, frozen, unprepared",Vegetables and Vegetable Products,90.04,36,0.78,0.46,7.90,3.3,4.76,0.83,68,235
11131,"Carrots, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.32,37,0.58,0.68,7.73,3.3,4.08,0.69,59,192
11134,"Cassava, raw",Vegetables and Vegetable Products,59.68,160,1.36,0.28,38.06,1.8,1.70,0.62,14,271
11135,"Cauliflower, raw",Vegetables and Vegetable Products,92.07,25,1.92,0.28,4.97,2.0,1.91,0.76,30,299
11136,"Cauliflower, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.00,23,1.84,0.45,4.11,2.3,2.08,0.60,15,142
11137,"Cauliflower, frozen, unprepared",Vegetables and Vegetable Products,92.51,24,2.01,0.27,4.68,2.3,2.22,0.53,24,193
11138,"Cauliflower, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.00,19,1.61,0.22,3.75,2.7,1.05,0.42,18,139
11141,"Celeriac, raw",Vegetables and Vegetable Products,88.00,42,1.50,0.30,9.20,1.8,1.60,1.00,100,300
11142,"Celeriac, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.30,27,0.96,0.19,5.90,1.2,,0.64,61,173
11143,"Celery, raw",Vegetables and Vegetable Products,95.43,16,0.69,0.17,2.97,1.6,1.83,0.75,80,260
11144,"Celery, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.11,18,0.83,0.16,4.00,1.6,2.37,0.90,91,284
11145,"Celtuce, raw",Vegetables and Vegetable Products,94.50,18,0.85,0.30,3.65,1.7,,0.70,11,330
11147,"Chard, swiss, raw",Vegetables and Vegetable Products,92.66,19,1.80,0.20,3.74,1.6,1.10,1.60,213,379
11148,"Chard, swiss, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.65,20,1.88,0.08,4.13,2.1,1.10,1.26,179,549
11149,"Chayote, fruit, raw",Vegetables and Vegetable Products,94.24,19,0.82,0.13,4.51,1.7,1.66,0.30,2,125
11150,"Chayote, fruit, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.43,24,0.62,0.48,5.09,2.8,,0.38,1,173
11151,"Chicory, witloof, raw",Vegetables and Vegetable Products,94.52,17,0.90,0.10,4.00,3.1,,0.47,2,211
11152,"Chicory greens, raw",Vegetables and Vegetable Products,92.00,23,1.70,0.30,4.70,4.0,0.70,1.30,45,420
11154,"Chicory roots, raw",Vegetables and Vegetable Products,80.00,72,1.40,0.20,17.51,1.5,8.73,0.89,50,290
11156,"Chives, raw",Vegetables and Vegetable Products,90.65,30,3.27,0.73,4.35,2.5,1.85,1.00,3,296
11157,"Chrysanthemum, garland, raw",Vegetables and Vegetable Products,91.40,24,3.36,0.56,3.02,3.0,,1.67,118,567
11158,"Chrysanthemum, garland, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.49,20,1.64,0.09,4.31,2.3,2.01,1.47,53,569
11161,"Collards, raw",Vegetables and Vegetable Products,89.62,32,3.02,0.61,5.42,4.0,0.46,1.32,17,213
11162,"Collards, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.18,33,2.71,0.72,5.65,4.0,0.40,0.73,15,117
11163,"Collards, frozen, chopped, unprepared",Vegetables and Vegetable Products,89.53,33,2.69,0.37,6.46,3.6,,0.95,48,253
11164,"Collards, frozen, chopped, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.47,36,2.97,0.41,7.10,2.8,0.57,1.05,50,251
11165,"Coriander (cilantro) leaves, raw",Vegetables and Vegetable Products,92.21,23,2.13,0.52,3.67,2.8,0.87,1.47,46,521
11167,"Corn, sweet, yellow, raw",Vegetables and Vegetable Products,76.05,86,3.27,1.35,18.70,2.0,6.26,0.62,15,270
11168,"Corn, sweet, yellow, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,73.41,96,3.41,1.50,20.98,2.4,4.54,0.71,1,218
11170,"Corn, sweet, yellow, canned, brine pack, regular pack, solids and liquids",Vegetables and Vegetable Products,82.61,61,1.95,0.77,13.86,1.7,2.83,0.80,195,136
11172,"Corn, sweet, yellow, canned, whole kernel, drained solids",Vegetables and Vegetable Products,77.80,79,2.46,1.11,17.77,1.9,3.04,0.86,186,138
11174,"Corn, sweet, yellow, canned, cream style, regular pack",Vegetables and Vegetable Products,78.73,72,1.74,0.42,18.13,1.2,3.23,0.98,261,134
11176,"Corn, sweet, yellow, canned, vacuum pack, regular pack",Vegetables and Vegetable Products,76.58,79,2.41,0.50,19.44,2.0,3.56,1.07,272,186
11177,"Corn, sweet, yellow, canned, drained solids, rinsed with tap water",Vegetables and Vegetable Products,82.80,74,2.18,1.43,13.02,,,0.57,163,116
11178,"Corn, sweet, yellow, frozen, kernels cut off cob, unprepared",Vegetables and Vegetable Products,75.00,88,3.02,0.78,20.71,2.1,2.50,0.48,3,213
11179,"Corn, sweet, yellow, frozen, kernels cut off cob, boiled, drained, without salt",Vegetables and Vegetable Products,77.03,81,2.55,0.67,19.30,2.4,3.07,0.44,1,233
11180,"Corn, sweet, yellow, frozen, kernels on cob, unprepared",Vegetables and Vegetable Products,71.79,98,3.28,0.78,23.50,2.8,3.78,0.65,5,294
11181,"Corn, sweet, yellow, frozen, kernels on cob, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,73.20,94,3.11,0.74,22.33,2.8,3.59,0.62,4,251
11182,"Corn, yellow, whole kernel, frozen, microwaved",Vegetables and Vegetable Products,68.40,131,3.62,1.42,25.87,2.6,3.36,0.69,4,276
11184,"Corn with red and green peppers, canned, solids and liquids",Vegetables and Vegetable Products,77.50,75,2.33,0.55,18.17,,,1.45,347,153
11190,"Cornsalad, raw",Vegetables and Vegetable Products,92.80,21,2.00,0.40,3.60,,,1.20,4,459
11191,"Cowpeas (blackeyes), immature seeds, raw",Vegetables and Vegetable Products,77.20,90,2.95,0.35,18.83,5.0,3.00,0.67,4,431
11192,"Cowpeas (blackeyes), immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,75.48,97,3.17,0.38,20.32,5.0,3.23,0.65,4,418
11195,"Cowpeas (blackeyes), immature seeds, frozen, unprepared",Vegetables and Vegetable Products,64.15,139,8.98,0.70,25.13,5.0,,1.05,6,441
11196,"Cowpeas (blackeyes), immature seeds, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,66.10,132,8.49,0.66,23.76,6.4,4.46,0.99,5,375
11197,"Cowpeas, young pods with seeds, raw",Vegetables and Vegetable Products,86.00,44,3.30,0.30,9.50,3.3,5.04,0.90,4,215
11198,"Cowpeas, young pods with seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.50,34,2.60,0.30,7.00,,,0.60,3,196
11199,"Yardlong bean, raw",Vegetables and Vegetable Products,87.85,47,2.80,0.40,8.35,,,0.60,4,240
11200,"Yardlong bean, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,87.47,47,2.53,0.10,9.18,,,0.73,4,290
11201,"Cowpeas, leafy tips, raw",Vegetables and Vegetable Products,89.78,29,4.10,0.25,4.82,,,1.05,7,455
11202,"Cowpeas, leafy tips, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.30,22,4.67,0.10,2.80,,,1.13,6,351
11203,"Cress, garden, raw",Vegetables and Vegetable Products,89.40,32,2.60,0.70,5.50,1.1,4.40,1.80,14,606
11204,"Cress, garden, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.50,23,1.90,0.60,3.80,0.7,3.11,1.20,8,353
11205,"Cucumber, with peel, raw",Vegetables and Vegetable Products,95.23,15,0.65,0.11,3.63,0.5,1.67,0.38,2,147
11206,"Cucumber, peeled, raw",Vegetables and Vegetable Products,96.73,12,0.59,0.16,2.16,0.7,1.38,0.36,2,136
11207,"Dandelion greens, raw",Vegetables and Vegetable Products,85.60,45,2.70,0.70,9.20,3.5,0.71,1.80,76,397
11208,"Dandelion greens, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.80,33,2.00,0.60,6.40,2.9,0.50,1.20,44,232
11209,"Eggplant, raw",Vegetables and Vegetable Products,92.30,25,0.98,0.18,5.88,3.0,3.53,0.66,2,229
11210,"Eggplant, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.67,35,0.83,0.23,8.73,2.5,3.20,0.54,1,123
11211,"Edamame, frozen, unprepared",Vegetables and Vegetable Products,75.17,110,10.25,4.73,8.58,4.8,2.48,1.27,6,482
11212,"Edamame, frozen, prepared",Vegetables and Vegetable Products,72.77,122,10.88,5.20,9.94,5.2,2.18,1.21,6,436
11213,"Endive, raw",Vegetables and Vegetable Products,93.79,17,1.25,0.20,3.35,3.1,0.25,1.41,22,314
11215,"Garlic, raw",Vegetables and Vegetable Products,58.58,149,6.36,0.50,33.06,2.1,1.00,1.50,17,401
11216,"Ginger root, raw",Vegetables and Vegetable Products,78.89,80,1.82,0.75,17.77,2.0,1.70,0.77,13,415
11218,"Gourd, white-flowered (calabash), raw",Vegetables and Vegetable Products,95.54,14,0.62,0.02,3.39,0.5,,0.43,2,150
11219,"Gourd, white-flowered (calabash), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.32,15,0.60,0.02,3.69,1.2,,0.37,2,170
11220,"Gourd, dishcloth (towelgourd), raw",Vegetables and Vegetable Products,93.85,20,1.20,0.20,4.35,1.1,2.02,0.40,3,139
11221,"Gourd, dishcloth (towelgourd), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,84.29,56,0.66,0.34,14.34,2.9,5.17,0.37,21,453
11222,"Drumstick leaves, raw",Vegetables and Vegetable Products,78.66,64,9.40,1.40,8.28,2.0,,2.26,9,337
11223,"Drumstick leaves, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,81.65,60,5.27,0.93,11.15,2.0,1.00,1.00,9,344
11224,"Hyacinth-beans, immature seeds, raw",Vegetables and Vegetable Products,87.87,46,2.10,0.20,9.19,3.3,4.08,0.64,2,252
11225,"Hyacinth-beans, immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,86.90,50,2.95,0.27,9.20,,,0.68,2,262
11226,"Jerusalem-artichokes, raw",Vegetables and Vegetable Products,78.01,73,2.00,0.01,17.44,1.6,9.60,2.54,4,429
11228,"Jew's ear, (pepeao), raw",Vegetables and Vegetable Products,92.59,25,0.48,0.04,6.75,,,0.15,9,43
11230,"Pepeao, dried",Vegetables and Vegetable Products,11.14,298,4.82,0.44,81.03,,,2.57,70,708
11231,"Jute, potherb, raw",Vegetables and Vegetable Products,87.72,34,4.65,0.25,5.80,,,1.58,8,559
11232,"Jute, potherb, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,87.15,37,3.68,0.20,7.29,2.0,1.00,1.68,11,550
11233,"Kale, raw",Vegetables and Vegetable Products,84.04,49,4.28,0.93,8.75,3.6,2.26,2.01,38,491
11234,"Kale, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.20,28,1.90,0.40,5.63,2.0,1.25,0.87,23,228
11235,"Kale, frozen, unprepared",Vegetables and Vegetable Products,91.12,28,2.66,0.46,4.90,2.0,,0.88,15,333
11236,"Kale, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.50,30,2.84,0.49,5.23,2.0,1.34,0.94,15,321
11237,"Kanpyo, (dried gourd strips)",Vegetables and Vegetable Products,19.97,258,8.58,0.56,65.03,9.8,,5.86,15,1582
11238,"Mushrooms, shiitake, raw",Vegetables and Vegetable Products,89.74,34,2.24,0.49,6.79,2.5,2.38,0.73,9,304
11239,"Mushrooms, Chanterelle, raw",Vegetables and Vegetable Products,89.85,38,1.49,0.53,6.86,3.8,1.16,1.26,9,506
11240,"Mushrooms, morel, raw",Vegetables and Vegetable Products,89.61,31,3.12,0.57,5.10,2.8,0.60,1.58,21,411
11241,"Kohlrabi, raw",Vegetables and Vegetable Products,91.00,27,1.70,0.10,6.20,3.6,2.60,1.00,20,350
11242,"Kohlrabi, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.30,29,1.80,0.11,6.69,1.1,2.80,1.10,21,340
11243,"Mushrooms, portabella, grilled",Vegetables and Vegetable Products,90.66,29,3.28,0.58,4.44,2.2,2.26,1.05,11,437
11244,"Lambsquarters, raw",Vegetables and Vegetable Products,84.30,43,4.20,0.80,7.30,4.0,,3.40,43,452
11245,"Lambsquarters, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.90,32,3.20,0.70,5.00,2.1,0.62,2.20,29,288
11246,"Leeks, (bulb and lower leaf-portion), raw",Vegetables and Vegetable Products,83.00,61,1.50,0.30,14.15,1.8,3.90,1.05,20,180
11247,"Leeks, (bulb and lower leaf-portion), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.80,31,0.81,0.20,7.62,1.0,2.11,0.57,10,87
11248,"Lentils, sprouted, raw",Vegetables and Vegetable Products,67.34,106,8.96,0.55,22.14,,,1.00,11,322
11249,"Lentils, sprouted, cooked, stir-fried, without salt",Vegetables and Vegetable Products,68.70,101,8.80,0.45,21.25,,,0.80,10,284
11250,"Lettuce, butterhead (includes boston and bibb types), raw",Vegetables and Vegetable Products,95.63,13,1.35,0.22,2.23,1.1,0.94,0.57,5,238
11251,"Lettuce, cos or romaine, raw",Vegetables and Vegetable Products,94.61,17,1.23,0.30,3.29,2.1,1.19,0.58,8,247
11252,"Lettuce, iceberg (includes crisphead types), raw",Vegetables and Vegetable Products,95.64,14,0.90,0.14,2.97,1.2,1.97,0.36,10,141
11253,"Lettuce, green leaf, raw",Vegetables and Vegetable Products,94.98,15,1.36,0.15,2.87,1.3,0.78,0.62,28,194
11254,"Lotus root, raw",Vegetables and Vegetable Products,79.10,74,2.60,0.10,17.23,4.9,,0.97,40,556
11255,"Lotus root, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,81.42,66,1.58,0.07,16.02,3.1,0.50,0.91,45,363
11257,"Lettuce, red leaf, raw",Vegetables and Vegetable Products,95.64,16,1.33,0.22,2.26,0.9,0.48,0.55,25,187
11258,"Mountain yam, hawaii, raw",Vegetables and Vegetable Products,81.44,67,1.34,0.10,16.30,2.5,0.31,0.82,13,418
11259,"Mountain yam, hawaii, cooked, steamed, without salt",Vegetables and Vegetable Products,77.14,82,1.73,0.08,20.00,,,1.06,12,495
11260,"Mushrooms, white, raw",Vegetables and Vegetable Products,92.45,22,3.09,0.34,3.26,1.0,1.98,0.85,5,318
11261,"Mushrooms, white, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.08,28,2.17,0.47,5.29,2.2,2.34,0.99,2,356
11263,"Mushrooms, white, stir-fried",Vegetables and Vegetable Products,91.10,26,3.58,0.33,4.04,1.8,0.00,0.94,12,396
11264,"Mushrooms, canned, drained solids",Vegetables and Vegetable Products,91.08,25,1.87,0.29,5.09,2.4,2.34,1.67,425,129
11265,"Mushrooms, portabella, raw",Vegetables and Vegetable Products,92.82,22,2.11,0.35,3.87,1.3,2.50,0.85,9,364
11266,"Mushrooms, brown, italian, or crimini, raw",Vegetables and Vegetable Products,92.12,22,2.50,0.10,4.30,0.6,1.72,0.98,6,448
11267,"Mushrooms, shiitake, stir-fried",Vegetables and Vegetable Products,87.74,39,3.45,0.35,7.68,3.6,0.30,0.78,5,326
11268,"Mushrooms, shiitake, dried",Vegetables and Vegetable Products,9.50,296,9.58,0.99,75.37,11.5,2.21,4.56,13,1534
11269,"Mushrooms, shiitake, cooked, without salt",Vegetables and Vegetable Products,83.48,56,1.56,0.22,14.39,2.1,3.84,0.35,4,117
11270,"Mustard greens, raw",Vegetables and Vegetable Products,90.70,27,2.86,0.42,4.67,3.2,1.32,1.36,20,384
11271,"Mustard greens, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.78,26,2.56,0.47,4.51,2.0,1.41,0.69,9,162
11272,"Mustard greens, frozen, unprepared",Vegetables and Vegetable Products,93.21,20,2.49,0.27,3.41,3.3,,0.63,29,170
11273,"Mustard greens, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.80,19,2.27,0.25,3.11,2.8,0.32,0.57,25,139
11274,"Mustard spinach, (tendergreen), raw",Vegetables and Vegetable Products,92.20,22,2.20,0.30,3.90,2.8,,1.40,21,449
11275,"Mustard spinach, (tendergreen), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.50,16,1.70,0.20,2.80,2.0,,0.80,14,285
11276,"New Zealand spinach, raw",Vegetables and Vegetable Products,94.00,14,1.50,0.20,2.50,1.5,0.29,1.80,130,130
11277,"New Zealand spinach, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.80,12,1.30,0.17,2.13,1.4,0.25,1.60,107,102
11278,"Okra, raw",Vegetables and Vegetable Products,89.58,33,1.93,0.19,7.45,3.2,1.48,0.86,7,299
11279,"Okra, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.57,22,1.87,0.21,4.51,2.5,2.40,0.84,6,135
11280,"Okra, frozen, unprepared",Vegetables and Vegetable Products,90.82,30,1.69,0.25,6.63,2.2,2.97,0.61,3,211
11281,"Okra, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.12,29,1.63,0.24,6.41,2.1,2.87,0.59,3,184
11282,"Onions, raw",Vegetables and Vegetable Products,89.11,40,1.10,0.10,9.34,1.7,4.24,0.35,4,146
11283,"Onions, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,87.86,44,1.36,0.19,10.15,1.4,4.73,0.44,3,166
11284,"Onions, dehydrated flakes",Vegetables and Vegetable Products,3.93,349,8.95,0.46,83.28,9.2,37.41,3.38,21,1622
11285,"Onions, canned, solids and liquids",Vegetables and Vegetable Products,94.10,19,0.85,0.09,4.02,1.2,2.20,0.94,371,111
11286,"Onions, yellow, sauteed",Vegetables and Vegetable Products,80.01,132,0.95,10.80,7.86,1.7,,0.38,12,133
11287,"Onions, frozen, chopped, unprepared",Vegetables and Vegetable Products,91.99,29,0.79,0.10,6.82,1.8,,0.30,12,124
11288,"Onions, frozen, chopped, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.24,28,0.77,0.10,6.59,1.8,2.90,0.30,12,108
11289,"Onions, frozen, whole, unprepared",Vegetables and Vegetable Products,90.22,35,0.89,0.06,8.45,1.7,3.81,0.38,10,142
11290,"Onions, frozen, whole, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.24,28,0.71,0.05,6.70,1.4,2.90,0.30,8,101
11291,"Onions, spring or scallions (includes tops and bulb), raw",Vegetables and Vegetable Products,89.83,32,1.83,0.19,7.34,2.6,2.33,0.81,16,276
11292,"Onions, young green, tops only",Vegetables and Vegetable Products,92.32,27,0.97,0.47,5.74,1.8,4.95,0.51,15,159
11293,"Onions, welsh, raw",Vegetables and Vegetable Products,90.50,34,1.90,0.40,6.50,2.4,2.18,0.70,17,212
11294,"Onions, sweet, raw",Vegetables and Vegetable Products,91.24,32,0.80,0.08,7.55,0.9,5.02,0.34,8,119
11295,"Onion rings, breaded, par fried, frozen, unprepared",Vegetables and Vegetable Products,51.22,258,3.15,14.10,30.53,1.8,,1.00,246,190
11296,"Onion rings, breaded, par fried, frozen, prepared, heated in oven",Vegetables and Vegetable Products,46.37,276,4.14,14.30,33.79,2.2,5.10,1.40,370,123
11297,"Parsley, fresh",Vegetables and Vegetable Products,87.71,36,2.97,0.79,6.33,3.3,0.85,2.20,56,554
11298,"Parsnips, raw",Vegetables and Vegetable Products,79.53,75,1.20,0.30,17.99,4.9,4.80,0.98,10,375
11299,"Parsnips, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,80.24,71,1.32,0.30,17.01,3.6,4.80,1.13,10,367
11300,"Peas, edible-podded, raw",Vegetables and Vegetable Products,88.89,42,2.80,0.20,7.55,2.6,4.00,0.56,4,200
11301,"Peas, edible-podded, boiled, drained, without salt",Vegetables and Vegetable Products,88.91,42,3.27,0.23,7.05,2.8,3.99,0.54,4,240
11302,"Peas, edible-podded, frozen, unprepared",Vegetables and Vegetable Products,89.30,42,2.80,0.30,7.20,3.1,,0.40,4,192
11303,"Peas, edible-podded, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,86.60,52,3.50,0.38,9.02,3.1,4.82,0.50,5,217
11304,"Peas, green, raw",Vegetables and Vegetable Products,78.86,81,5.42,0.40,14.45,5.1,5.67,0.87,5,244
11305,"Peas, green, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,77.87,84,5.36,0.22,15.63,5.5,5.93,0.92,3,271
11306,"Peas, green, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,85.13,58,3.01,0.48,10.60,3.3,3.20,0.77,185,106
11308,"Peas, green (includes baby and lesuer types), canned, drained solids, unprepared",Vegetables and Vegetable Products,82.29,68,4.47,0.80,11.36,4.9,2.99,1.09,273,106
11310,"Peas, green, canned, seasoned, solids and liquids",Vegetables and Vegetable Products,86.51,50,3.09,0.27,9.25,2.0,,0.88,254,122
11311,"Peas, green, canned, drained solids, rinsed in tap water",Vegetables and Vegetable Products,81.89,71,4.33,0.95,11.82,,,1.01,231,105
11312,"Peas, green, frozen, unprepared",Vegetables and Vegetable Products,79.98,77,5.22,0.40,13.62,4.5,5.00,0.78,108,153
11313,"Peas, green, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,79.52,78,5.15,0.27,14.26,5.5,4.65,0.80,72,110
11316,"Peas, mature seeds, sprouted, raw",Vegetables and Vegetable Products,62.27,124,8.80,0.68,27.11,,,1.14,20,381
11317,"Peas, mature seeds, sprouted, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,74.37,98,7.05,0.51,17.08,,,0.99,3,268
11318,"Peas and carrots, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,88.15,38,2.17,0.27,8.48,2.0,,0.93,260,100
11322,"Peas and carrots, frozen, unprepared",Vegetables and Vegetable Products,84.36,53,3.40,0.47,11.15,3.4,,0.62,79,194
11323,"Peas and carrots, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,85.80,48,3.09,0.42,10.12,3.1,4.36,0.57,68,158
11324,"Peas and onions, canned, solids and liquids",Vegetables and Vegetable Products,86.40,51,3.28,0.38,8.57,2.3,,1.37,442,96
11326,"Peas and onions, frozen, unprepared",Vegetables and Vegetable Products,81.50,70,3.98,0.32,13.51,3.5,,0.70,61,203
11327,"Peas and onions, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.18,45,2.54,0.20,8.63,2.2,3.77,0.45,37,117
11329,"Peppers, hot chili, green, canned, pods, excluding seeds, solids and liquids",Vegetables and Vegetable Products,92.50,21,0.90,0.10,5.10,1.3,3.12,1.40,1173,187
11333,"Peppers, sweet, green, raw",Vegetables and Vegetable Products,93.89,20,0.86,0.17,4.64,1.7,2.40,0.43,3,175
11334,"Peppers, sweet, green, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.87,28,0.92,0.20,6.70,1.2,3.19,0.31,2,166
11335,"Peppers, sweet, green, canned, solids and liquids",Vegetables and Vegetable Products,91.25,18,0.80,0.30,3.90,1.2,,3.75,1369,146
11337,"Peppers, sweet, green, frozen, chopped, unprepared",Vegetables and Vegetable Products,93.96,20,1.08,0.21,4.45,1.6,,0.30,5,91
11338,"Peppers, sweet, green, frozen, chopped, boiled, drained, without salt",Vegetables and Vegetable Products,94.70,18,0.95,0.18,3.90,0.9,,0.27,4,72
11339,"Peppers, sweet, green, sauteed",Vegetables and Vegetable Products,82.65,127,0.78,11.85,4.22,1.8,2.17,0.50,17,134
11344,"Pigeonpeas, immature seeds, raw",Vegetables and Vegetable Products,65.88,136,7.20,1.64,23.88,5.1,3.00,1.40,5,552
11345,"Pigeonpeas, immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,71.80,111,5.96,1.36,19.49,6.2,2.48,1.39,5,456
11349,Poi,Vegetables and Vegetable Products,71.64,112,0.38,0.14,27.23,0.4,0.39,0.61,12,183
11350,"Pokeberry shoots, (poke), raw",Vegetables and Vegetable Products,91.60,23,2.60,0.40,3.70,1.7,,1.70,23,242
11351,"Pokeberry shoots, (poke), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.90,20,2.30,0.40,3.10,1.5,1.60,1.30,18,184
11352,"Potato, flesh and skin, raw",Vegetables and Vegetable Products,79.34,77,2.02,0.09,17.47,2.2,0.78,1.08,6,421
11353,"Potatoes, russet, flesh and skin, raw",Vegetables and Vegetable Products,78.58,79,2.14,0.08,18.07,1.3,0.62,1.13,5,417
11354,"Potatoes, white, flesh and skin, raw",Vegetables and Vegetable Products,81.58,69,1.68,0.10,15.71,2.4,1.15,0.94,16,407
11355,"Potatoes, red, flesh and skin, raw",Vegetables and Vegetable Products,80.96,70,1.89,0.14,15.90,1.7,1.29,1.10,18,455
11356,"Potatoes, Russet, flesh and skin, baked",Vegetables and Vegetable Products,74.45,97,2.63,0.13,21.44,2.3,1.08,1.35,14,550
11357,"Potatoes, white, flesh and skin, baked",Vegetables and Vegetable Products,75.43,94,2.10,0.15,21.08,2.1,1.53,1.24,7,544
11358,"Potatoes, red, flesh and skin, baked",Vegetables and Vegetable Products,76.67,89,2.30,0.15,19.59,1.8,1.43,1.29,12,545
11359,"Potatoes, french fried, crinkle or regular cut, salt added in processing, frozen, as purchased",Vegetables and Vegetable Products,67.11,150,2.34,4.99,23.96,2.0,0.21,1.59,349,380
11360,"Potatoes, french fried, crinkle or regular cut, salt added in processing, frozen, oven-heated",Vegetables and Vegetable Products,63.07,166,2.51,5.13,27.50,2.3,0.29,1.79,391,471
11361,"Potatoes, roasted, salt added in processing, frozen, unprepared",Vegetables and Vegetable Products,68.08,130,2.22,1.81,26.15,2.6,0.69,1.73,298,450
11362,"Potatoes, raw, skin",Vegetables and Vegetable Products,83.29,58,2.57,0.10,12.44,2.5,,1.61,10,413
11363,"Potatoes, baked, flesh, without salt",Vegetables and Vegetable Products,75.42,93,1.96,0.10,21.55,1.5,1.70,0.97,5,391
11364,"Potatoes, baked, skin, without salt",Vegetables and Vegetable Products,47.31,198,4.29,0.10,46.06,7.9,1.40,2.24,21,573
11365,"Potatoes, boiled, cooked in skin, flesh, without salt",Vegetables and Vegetable Products,76.98,87,1.87,0.10,20.13,1.8,0.87,0.92,4,379
11366,"Potatoes, boiled, cooked in skin, skin, without salt",Vegetables and Vegetable Products,77.80,78,2.86,0.10,17.21,3.3,,2.04,14,407
11367,"Potatoes, boiled, cooked without skin, flesh, without salt",Vegetables and Vegetable Products,77.46,86,1.71,0.10,20.01,1.8,0.85,0.72,5,328
11368,"Potatoes, microwaved, cooked in skin, flesh, without salt",Vegetables and Vegetable Products,73.55,100,2.10,0.10,23.28,1.6,,0.97,7,411
11369,"Potatoes, microwaved, cooked in skin, skin, without salt",Vegetables and Vegetable Products,63.50,132,4.39,0.10,29.63,5.5,,2.38,16,650
11370,"Potatoes, hash brown, home-prepared",Vegetables and Vegetable Products,47.25,265,3.00,12.52,35.11,3.2,1.49,2.12,342,576
11371,"Potatoes, mashed, home-prepared, whole milk and margarine added",Vegetables and Vegetable Products,75.25,113,1.96,4.20,16.94,1.5,1.41,1.65,333,326
11372,"Potatoes, scalloped, home-prepared with butter",Vegetables and Vegetable Products,80.94,88,2.87,3.68,10.78,1.9,,1.73,335,378
11373,"Potatoes, au gratin, home-prepared from recipe using butter",Vegetables and Vegetable Products,74.00,132,5.06,7.59,11.27,1.8,,2.09,433,396
11374,"Potatoes, canned, solids and liquids",Vegetables and Vegetable Products,87.83,44,1.20,0.11,9.89,1.4,,0.98,217,205
11376,"Potatoes, canned, drained solids",Vegetables and Vegetable Products,84.28,60,1.41,0.21,13.61,2.3,,0.86,219,229
11378,"Potatoes, mashed, dehydrated, flakes without milk, dry form",Vegetables and Vegetable Products,6.58,354,8.34,0.41,81.17,6.6,3.36,3.50,104,1098
11379,"Potatoes, mashed, dehydrated, prepared from flakes without milk, whole milk and butter added",Vegetables and Vegetable Products,81.20,97,1.77,5.13,10.87,0.8,1.61,1.03,164,164
11380,"Potatoes, mashed, dehydrated, granules without milk, dry form",Vegetables and Vegetable Products,3.63,372,8.22,0.54,85.51,7.1,3.47,2.10,67,703
11381,"Potatoes, mashed, dehydrated, prepared from granules without milk, whole milk and butter added",Vegetables and Vegetable Products,77.49,108,2.05,4.96,14.36,2.2,,1.14,257,144
11382,"Potatoes, mashed, dehydrated, granules with milk, dry form",Vegetables and Vegetable Products,6.30,357,10.90,1.10,77.70,6.6,3.37,4.00,82,1848
11383,"Potatoes, mashed, dehydrated, prepared from granules with milk, water and margarine added",Vegetables and Vegetable Products,76.01,116,2.13,4.80,16.13,1.3,1.74,0.93,172,155
11384,"Potatoes, au gratin, dry mix, unprepared",Vegetables and Vegetable Products,4.97,314,8.90,3.70,74.31,4.1,,8.12,2095,990
11385,"Potatoes, au gratin, dry mix, prepared with water, whole milk and butter",Vegetables and Vegetable Products,78.98,93,2.30,4.12,12.84,0.9,,1.76,439,219
11386,"Potatoes, scalloped, dry mix, unprepared",Vegetables and Vegetable Products,6.22,358,7.77,4.59,73.93,8.6,,7.49,1578,905
11387,"Potatoes, scalloped, dry mix, prepared with water, whole milk and butter",Vegetables and Vegetable Products,79.17,93,2.12,4.30,12.77,1.1,,1.64,341,203
11390,"Potatoes, hash brown, frozen, plain, unprepared",Vegetables and Vegetable Products,78.85,82,2.06,0.62,17.72,1.4,,0.75,22,285
11391,"Potatoes, hash brown, frozen, plain, prepared, pan fried in canola oil",Vegetables and Vegetable Products,55.95,219,2.65,11.59,28.51,3.2,0.27,1.30,15,496
11392,"Potatoes, hash brown, frozen, with butter sauce, unprepared",Vegetables and Vegetable Products,72.51,135,1.87,6.66,18.28,2.9,,0.69,77,248
11393,"Potatoes, hash brown, frozen, with butter sauce, prepared",Vegetables and Vegetable Products,63.71,178,2.46,8.79,24.13,3.8,,0.92,101,327
11394,"Potatoes, french fried, shoestring, salt added in processing, frozen, as purchased",Vegetables and Vegetable Products,64.51,167,2.16,6.24,25.59,2.3,0.20,1.50,323,379
11395,"Potatoes, french fried, shoestring, salt added in processing, frozen, oven-heated",Vegetables and Vegetable Products,56.62,199,2.90,6.76,31.66,2.8,0.31,2.07,400,505
11396,"Potatoes, o'brien, frozen, unprepared",Vegetables and Vegetable Products,79.97,76,1.83,0.14,17.47,1.9,,0.60,33,249
11397,"Potatoes, o'brien, frozen, prepared",Vegetables and Vegetable Products,61.96,204,2.22,13.21,21.86,1.7,,0.75,43,473
11398,"Potato puffs, frozen, unprepared",Vegetables and Vegetable Products,62.67,177,1.97,8.37,25.25,1.9,0.25,1.75,428,265
11399,"Potato puffs, frozen, oven-heated",Vegetables and Vegetable Products,59.64,192,2.13,9.05,27.30,2.0,0.27,1.89,463,286
11400,"Potatoes, frozen, whole, unprepared",Vegetables and Vegetable Products,79.30,78,2.38,0.16,17.47,1.2,0.78,0.69,25,346
11401,"Potatoes, frozen, whole, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,82.80,65,1.98,0.13,14.52,1.4,,0.57,20,287
11402,"Potatoes, french fried, all types, salt added in processing, frozen, unprepared",Vegetables and Vegetable Products,66.61,147,2.24,4.66,24.81,1.9,0.20,1.68,332,408
11403,"Potatoes, french fried, all types, salt added in processing, frozen, home-prepared, oven heated",Vegetables and Vegetable Products,62.48,164,2.66,5.22,27.74,2.8,0.28,1.90,388,451
11406,"Potatoes, french fried, cottage-cut, salt not added in processing, frozen, as purchased",Vegetables and Vegetable Products,66.82,153,2.42,5.78,23.98,3.0,,1.01,32,338
11407,"Potatoes, french fried, cottage-cut, salt not added in processing, frozen, oven-heated",Vegetables and Vegetable Products,52.90,218,3.44,8.20,34.03,3.2,,1.43,45,480
11408,"Potatoes, frozen, french fried, par fried, extruded, unprepared",Vegetables and Vegetable Products,49.94,260,2.83,14.95,30.15,4.5,,2.13,490,430
11409,"Potatoes, frozen, french fried, par fried, extruded, prepared, heated in oven, without salt",Vegetables and Vegetable Products,35.40,333,3.55,18.71,39.68,3.2,,2.66,613,539
11411,"Potatoes, french fried, steak fries, salt added in processing, frozen, as purchased",Vegetables and Vegetable Products,69.29,133,2.19,3.39,23.51,1.9,0.20,1.61,317,400
11412,"Potatoes, french fried, steak fries, salt added in processing, frozen, oven-heated",Vegetables and Vegetable Products,64.85,152,2.57,3.76,26.98,2.6,0.25,1.84,373,459
11413,Potato flour,Vegetables and Vegetable Products,6.52,357,6.90,0.34,83.10,5.9,3.52,3.14,55,1001
11414,"Potato salad, home-prepared",Vegetables and Vegetable Products,76.00,143,2.68,8.20,11.17,1.3,,1.95,529,254
11416,"Pumpkin flowers, raw",Vegetables and Vegetable Products,95.15,15,1.03,0.07,3.28,,,0.48,5,173
11417,"Pumpkin flowers, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.20,15,1.09,0.08,3.30,0.9,2.40,0.33,6,106
11418,"Pumpkin leaves, raw",Vegetables and Vegetable Products,92.88,19,3.15,0.40,2.33,,,1.24,11,436
11419,"Pumpkin leaves, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.51,21,2.72,0.22,3.39,2.7,0.69,1.16,8,438
11422,"Pumpkin, raw",Vegetables and Vegetable Products,91.60,26,1.00,0.10,6.50,0.5,2.76,0.80,1,340
11423,"Pumpkin, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.69,20,0.72,0.07,4.90,1.1,2.08,0.62,1,230
11424,"Pumpkin, canned, without salt",Vegetables and Vegetable Products,89.97,34,1.10,0.28,8.09,2.9,3.30,0.56,5,206
11426,"Pumpkin pie mix, canned",Vegetables and Vegetable Products,71.49,104,1.09,0.13,26.39,8.3,,0.91,208,138
11427,"Purslane, raw",Vegetables and Vegetable Products,92.86,20,2.03,0.36,3.39,,,1.36,45,494
11428,"Purslane, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.52,18,1.49,0.19,3.55,,,1.25,44,488
11429,"Radishes, raw",Vegetables and Vegetable Products,95.27,16,0.68,0.10,3.40,1.6,1.86,0.55,39,233
11430,"Radishes, oriental, raw",Vegetables and Vegetable Products,94.62,18,0.60,0.10,4.10,1.6,2.50,0.58,21,227
11431,"Radishes, oriental, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.04,17,0.67,0.24,3.43,1.6,1.83,0.62,13,285
11432,"Radishes, oriental, dried",Vegetables and Vegetable Products,19.68,271,7.90,0.72,63.37,23.9,37.32,8.33,278,3494
11435,"Rutabagas, raw",Vegetables and Vegetable Products,89.43,37,1.08,0.16,8.62,2.3,4.46,0.71,12,305
11436,"Rutabagas, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.54,30,0.93,0.18,6.84,1.8,3.95,0.51,5,216
11437,"Salsify, (vegetable oyster), raw",Vegetables and Vegetable Products,77.00,82,3.30,0.20,18.60,3.3,,0.90,20,380
11438,"Salsify, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,81.00,68,2.73,0.17,15.36,3.1,2.90,0.74,16,283
11439,"Sauerkraut, canned, solids and liquids",Vegetables and Vegetable Products,92.52,19,0.91,0.14,4.28,2.9,1.78,2.15,661,170
11442,"Seaweed, agar, raw",Vegetables and Vegetable Products,91.32,26,0.54,0.03,6.75,0.5,0.28,1.36,9,226
11444,"Seaweed, irishmoss, raw",Vegetables and Vegetable Products,81.34,49,1.51,0.16,12.29,1.3,0.61,4.70,67,63
11445,"Seaweed, kelp, raw",Vegetables and Vegetable Products,81.58,43,1.68,0.56,9.57,1.3,0.60,6.61,233,89
11446,"Seaweed, laver, raw",Vegetables and Vegetable Products,85.03,35,5.81,0.28,5.11,0.3,0.49,3.77,48,356
11447,"Sesbania flower, raw",Vegetables and Vegetable Products,91.58,27,1.28,0.04,6.73,,,0.38,15,184
11448,"Sesbania flower, cooked, steamed, without salt",Vegetables and Vegetable Products,93.30,22,1.14,0.05,5.23,,,0.28,11,107
11450,"Soybeans, green, raw",Vegetables and Vegetable Products,67.50,147,12.95,6.80,11.05,4.2,,1.70,15,620
11451,"Soybeans, green, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,68.60,141,12.35,6.40,11.05,4.2,,1.60,14,539
11452,"Soybeans, mature seeds, sprouted, raw",Vegetables and Vegetable Products,69.05,122,13.09,6.70,9.57,1.1,,1.59,14,484
11453,"Soybeans, mature seeds, sprouted, cooked, steamed",Vegetables and Vegetable Products,79.45,81,8.47,4.45,6.53,0.8,0.52,1.10,10,355
11454,"Soybeans, mature seeds, sprouted, cooked, stir-fried",Vegetables and Vegetable Products,67.20,125,13.10,7.10,9.40,0.8,,3.20,14,567
11457,"Spinach, raw",Vegetables and Vegetable Products,91.40,23,2.86,0.39,3.63,2.2,0.42,1.72,79,558
11458,"Spinach, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.21,23,2.97,0.26,3.75,2.4,0.43,1.81,70,466
11459,"Spinach, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,93.22,19,2.11,0.37,2.92,1.6,,1.38,319,230
11461,"Spinach, canned, regular pack, drained solids",Vegetables and Vegetable Products,91.78,23,2.81,0.50,3.40,2.4,0.40,1.51,322,346
11463,"Spinach, frozen, chopped or leaf, unprepared",Vegetables and Vegetable Products,90.17,29,3.63,0.57,4.21,2.9,0.65,1.43,74,346
11464,"Spinach, frozen, chopped or leaf, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.94,34,4.01,0.87,4.80,3.7,0.51,1.39,97,302
11467,"Squash, summer, crookneck and straightneck, raw",Vegetables and Vegetable Products,94.28,19,1.01,0.27,3.88,1.0,3.53,0.56,2,222
11468,"Squash, summer, crookneck and straightneck, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.25,23,1.04,0.39,3.79,1.1,2.48,0.53,1,177
11471,"Squash, summer, crookneck and straightneck, canned, drained, solid, without salt",Vegetables and Vegetable Products,96.04,13,0.61,0.07,2.96,1.4,1.19,0.32,5,96
11473,"Squash, summer, crookneck and straightneck, frozen, unprepared",Vegetables and Vegetable Products,93.66,20,0.83,0.14,4.80,1.2,,0.58,5,209
11474,"Squash, summer, crookneck and straightneck, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.24,25,1.28,0.20,5.54,1.4,2.33,0.74,6,253
11475,"Squash, summer, scallop, raw",Vegetables and Vegetable Products,94.18,18,1.20,0.20,3.84,1.2,2.39,0.58,1,182
11476,"Squash, summer, scallop, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.00,16,1.03,0.17,3.30,1.9,1.50,0.50,1,140
11477,"Squash, summer, zucchini, includes skin, raw",Vegetables and Vegetable Products,94.79,17,1.21,0.32,3.11,1.0,2.50,0.58,8,261
11478,"Squash, summer, zucchini, includes skin, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,95.22,15,1.14,0.36,2.69,1.0,1.71,0.59,3,264
11479,"Squash, summer, zucchini, includes skin, frozen, unprepared",Vegetables and Vegetable Products,94.70,17,1.16,0.13,3.58,1.3,1.71,0.43,2,218
11480,"Squash, summer, zucchini, includes skin, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,94.74,17,1.15,0.13,3.56,1.3,1.69,0.42,2,194
11481,"Squash, summer, zucchini, italian style, canned",Vegetables and Vegetable Products,90.61,29,1.03,0.11,6.85,,,1.40,374,274
11482,"Squash, winter, acorn, raw",Vegetables and Vegetable Products,87.78,40,0.80,0.10,10.42,1.5,,0.90,3,347
11483,"Squash, winter, acorn, cooked, baked, without salt",Vegetables and Vegetable Products,82.90,56,1.12,0.14,14.58,4.4,,1.26,4,437
11484,"Squash, winter, acorn, cooked, boiled, mashed, without salt",Vegetables and Vegetable Products,89.70,34,0.67,0.08,8.79,2.6,,0.76,3,263
11485,"Squash, winter, butternut, raw",Vegetables and Vegetable Products,86.41,45,1.00,0.10,11.69,2.0,2.20,0.80,4,352
11486,"Squash, winter, butternut, cooked, baked, without salt",Vegetables and Vegetable Products,87.80,40,0.90,0.09,10.49,3.2,1.97,0.72,4,284
11487,"Squash, winter, butternut, frozen, unprepared",Vegetables and Vegetable Products,82.50,57,1.76,0.10,14.41,1.3,2.83,1.23,2,212
11488,"Squash, winter, butternut, frozen, cooked, boiled, without salt",Vegetables and Vegetable Products,87.80,39,1.23,0.07,10.05,,,0.86,2,133
11489,"Squash, winter, hubbard, raw",Vegetables and Vegetable Products,88.00,40,2.00,0.50,8.70,3.9,3.95,0.80,7,320
11490,"Squash, winter, hubbard, baked, without salt",Vegetables and Vegetable Products,85.10,50,2.48,0.62,10.81,4.9,4.90,0.99,8,358
11491,"Squash, winter, hubbard, cooked, boiled, mashed, without salt",Vegetables and Vegetable Products,91.10,30,1.48,0.37,6.46,2.9,2.93,0.59,5,214
11492,"Squash, winter, spaghetti, raw",Vegetables and Vegetable Products,91.60,31,0.64,0.57,6.91,1.5,2.76,0.28,17,108
11493,"Squash, winter, spaghetti, cooked, boiled, drained, or baked, without salt",Vegetables and Vegetable Products,92.30,27,0.66,0.26,6.46,1.4,2.53,0.32,18,117
11495,"Succotash, (corn and limas), raw",Vegetables and Vegetable Products,73.10,99,5.03,1.02,19.59,3.8,,1.26,4,369
11496,"Succotash, (corn and limas), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,68.37,115,5.07,0.80,24.38,4.5,,1.39,17,410
11497,"Succotash, (corn and limas), canned, with cream style corn",Vegetables and Vegetable Products,78.17,77,2.64,0.54,17.61,3.0,,1.04,245,183
11499,"Succotash, (corn and limas), canned, with whole kernel corn, solids and liquids",Vegetables and Vegetable Products,81.96,63,2.60,0.49,13.98,2.6,,0.96,221,163
11501,"Succotash, (corn and limas), frozen, unprepared",Vegetables and Vegetable Products,74.11,93,4.31,0.89,19.94,4.0,,0.75,45,295
11502,"Succotash, (corn and limas), frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,74.10,93,4.31,0.89,19.95,4.1,2.21,0.75,45,265
11503,"Swamp cabbage, (skunk cabbage), raw",Vegetables and Vegetable Products,92.47,19,2.60,0.20,3.14,2.1,,1.60,113,312
11504,"Swamp cabbage, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,92.93,20,2.08,0.24,3.71,1.9,,1.05,122,284
11505,"Sweet potato leaves, raw",Vegetables and Vegetable Products,86.81,42,2.49,0.51,8.82,5.3,,1.36,6,508
11506,"Sweet potato leaves, cooked, steamed, without salt",Vegetables and Vegetable Products,89.20,41,2.18,0.34,7.38,1.9,5.48,0.89,7,312
11507,"Sweet potato, raw, unprepared",Vegetables and Vegetable Products,77.28,86,1.57,0.05,20.12,3.0,4.18,0.99,55,337
11508,"Sweet potato, cooked, baked in skin, without salt",Vegetables and Vegetable Products,75.78,90,2.01,0.15,20.71,3.3,6.48,1.35,36,475
11510,"Sweet potato, cooked, boiled, without skin",Vegetables and Vegetable Products,80.13,76,1.37,0.14,17.72,2.5,5.74,0.63,27,230
11512,"Sweet potato, canned, vacuum pack",Vegetables and Vegetable Products,76.03,91,1.65,0.20,21.12,1.8,5.00,1.00,53,312
11514,"Sweet potato, canned, mashed",Vegetables and Vegetable Products,73.88,101,1.98,0.20,23.19,1.7,5.45,0.75,75,210
11516,"Sweet potato, frozen, unprepared",Vegetables and Vegetable Products,74.89,96,1.71,0.18,22.22,1.7,,1.00,6,365
11517,"Sweet potato, frozen, cooked, baked, without salt",Vegetables and Vegetable Products,73.70,100,1.71,0.12,23.40,1.8,9.17,1.07,8,377
11518,"Taro, raw",Vegetables and Vegetable Products,70.64,112,1.50,0.20,26.46,4.1,0.40,1.20,11,591
11519,"Taro, cooked, without salt",Vegetables and Vegetable Products,63.80,142,0.52,0.11,34.60,5.1,0.49,0.97,15,484
11520,"Taro leaves, raw",Vegetables and Vegetable Products,85.66,42,4.98,0.74,6.70,3.7,3.01,1.92,3,648
11521,"Taro leaves, cooked, steamed, without salt",Vegetables and Vegetable Products,92.15,24,2.72,0.41,4.02,2.0,,0.70,2,460
11522,"Taro shoots, raw",Vegetables and Vegetable Products,95.82,11,0.92,0.09,2.32,,,0.85,1,332
11523,"Taro shoots, cooked, without salt",Vegetables and Vegetable Products,95.30,14,0.73,0.08,3.20,,,0.70,2,344
11525,"Taro, tahitian, raw",Vegetables and Vegetable Products,87.96,44,2.79,0.97,6.91,,,1.38,50,606
11526,"Taro, tahitian, cooked, without salt",Vegetables and Vegetable Products,86.46,44,4.16,0.68,6.85,,,1.85,54,623
11527,"Tomatoes, green, raw",Vegetables and Vegetable Products,93.00,23,1.20,0.20,5.10,1.1,4.00,0.50,13,204
11529,"Tomatoes, red, ripe, raw, year round average",Vegetables and Vegetable Products,94.52,18,0.88,0.20,3.89,1.2,2.63,0.50,5,237
11530,"Tomatoes, red, ripe, cooked",Vegetables and Vegetable Products,94.34,18,0.95,0.11,4.01,0.7,2.49,0.60,11,218
11531,"Tomatoes, red, ripe, canned, packed in tomato juice",Vegetables and Vegetable Products,94.28,17,0.78,0.13,4.00,1.0,2.38,0.81,128,188
11533,"Tomatoes, red, ripe, canned, stewed",Vegetables and Vegetable Products,91.54,26,0.91,0.19,6.19,1.0,3.52,1.17,221,207
11537,"Tomatoes, red, ripe, canned, with green chilies",Vegetables and Vegetable Products,94.23,15,0.69,0.08,3.62,,,1.39,401,107
11540,"Tomato juice, canned, with salt added",Vegetables and Vegetable Products,93.90,17,0.76,0.05,4.24,0.4,3.56,1.05,269,229
11546,"Tomato products, canned, paste, without salt added",Vegetables and Vegetable Products,73.50,82,4.32,0.47,18.91,4.1,12.18,2.80,59,1014
11547,"Tomato products, canned, puree, without salt added",Vegetables and Vegetable Products,87.88,38,1.65,0.21,8.98,1.9,4.83,1.28,28,439
11548,Tomato powder,Vegetables and Vegetable Products,3.06,302,12.91,0.44,74.68,16.5,43.90,8.91,134,1927
11549,"Tomato products, canned, sauce",Vegetables and Vegetable Products,91.12,24,1.32,0.18,5.38,1.5,4.25,2.00,524,331
11551,"Tomato products, canned, sauce, with mushrooms",Vegetables and Vegetable Products,87.97,35,1.45,0.13,8.43,1.5,5.77,2.02,452,380
11553,"Tomato products, canned, sauce, with onions",Vegetables and Vegetable Products,86.09,42,1.56,0.19,9.94,1.8,,2.21,551,413
11555,"Tomato products, canned, sauce, with herbs and cheese",Vegetables and Vegetable Products,83.43,59,2.13,1.93,10.24,2.2,,2.27,543,356
11557,"Tomato products, canned, sauce, with onions, green peppers, and celery",Vegetables and Vegetable Products,88.28,41,0.94,0.74,8.77,1.4,7.36,1.27,546,398
11559,"Tomato products, canned, sauce, with tomato tidbits",Vegetables and Vegetable Products,89.09,32,1.32,0.39,7.09,1.4,,2.11,15,373
11563,"Tree fern, cooked, without salt",Vegetables and Vegetable Products,88.60,40,0.29,0.07,10.98,3.7,,0.06,5,5
11564,"Turnips, raw",Vegetables and Vegetable Products,91.87,28,0.90,0.10,6.43,1.8,3.80,0.70,67,191
11565,"Turnips, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.60,22,0.71,0.08,5.06,2.0,2.99,0.55,16,177
11566,"Turnips, frozen, unprepared",Vegetables and Vegetable Products,95.67,16,1.04,0.16,2.94,1.8,,0.19,25,137
11567,"Turnips, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.60,23,1.53,0.24,4.35,2.0,2.35,0.28,36,182
11568,"Turnip greens, raw",Vegetables and Vegetable Products,89.67,32,1.50,0.30,7.13,3.2,0.81,1.40,40,296
11569,"Turnip greens, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.20,20,1.14,0.23,4.36,3.5,0.53,1.07,29,203
11570,"Turnip greens, canned, solids and liquids",Vegetables and Vegetable Products,94.69,14,1.36,0.30,2.42,1.7,,1.23,277,141
11574,"Turnip greens, frozen, unprepared",Vegetables and Vegetable Products,92.93,22,2.47,0.31,3.67,2.5,,0.62,12,184
11575,"Turnip greens, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.40,29,3.35,0.42,4.98,3.4,0.75,0.85,15,224
11576,"Turnip greens and turnips, frozen, unprepared",Vegetables and Vegetable Products,93.13,21,2.46,0.19,3.39,2.4,,0.83,18,82
11577,"Turnip greens and turnips, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.04,35,2.99,0.38,4.85,3.1,1.07,0.74,19,216
11578,"Vegetable juice cocktail, canned",Vegetables and Vegetable Products,94.09,19,0.93,0.31,3.87,0.5,2.89,0.80,169,185
11579,"Vegetables, mixed, canned, solids and liquids",Vegetables and Vegetable Products,90.24,36,1.42,0.25,7.13,3.8,,0.96,224,138
11581,"Vegetables, mixed, canned, drained solids",Vegetables and Vegetable Products,87.01,49,2.59,0.25,9.26,3.0,2.41,0.89,214,291
11583,"Vegetables, mixed, frozen, unprepared",Vegetables and Vegetable Products,82.08,72,3.33,0.52,13.47,4.0,,0.60,47,212
11584,"Vegetables, mixed, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,83.23,65,2.86,0.15,13.09,4.4,3.12,0.67,35,169
11585,"Vegetable juice cocktail, low sodium, canned",Vegetables and Vegetable Products,94.13,19,0.91,0.32,3.83,0.5,2.81,0.82,55,204
11587,"Vinespinach, (basella), raw",Vegetables and Vegetable Products,93.10,19,1.80,0.30,3.40,,,1.40,24,510
11588,"Waterchestnuts, chinese, (matai), raw",Vegetables and Vegetable Products,73.46,97,1.40,0.10,23.94,3.0,4.80,1.10,14,584
11590,"Waterchestnuts, chinese, canned, solids and liquids",Vegetables and Vegetable Products,86.42,50,0.88,0.06,12.30,2.5,2.46,0.34,8,118
11591,"Watercress, raw",Vegetables and Vegetable Products,95.11,11,2.30,0.10,1.29,0.5,0.20,1.20,41,330
11593,"Waxgourd, (chinese preserving melon), raw",Vegetables and Vegetable Products,96.10,13,0.40,0.20,3.00,2.9,,0.30,111,6
11594,"Waxgourd, (chinese preserving melon), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,96.06,14,0.40,0.20,3.04,1.0,1.18,0.30,107,5
11595,"Winged beans, immature seeds, raw",Vegetables and Vegetable Products,87.04,49,6.95,0.87,4.31,,,0.83,4,223
11596,"Winged beans, immature seeds, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.11,38,5.31,0.66,3.21,,,0.71,4,274
11597,"Winged bean leaves, raw",Vegetables and Vegetable Products,76.85,74,5.85,1.10,14.10,,,2.10,9,176
11599,"Winged bean tuber, raw",Vegetables and Vegetable Products,57.40,148,11.60,0.90,28.10,,,2.00,35,586
11601,"Yam, raw",Vegetables and Vegetable Products,69.60,118,1.53,0.17,27.88,4.1,0.50,0.82,9,816
11602,"Yam, cooked, boiled, drained, or baked, without salt",Vegetables and Vegetable Products,70.13,116,1.49,0.14,27.48,3.9,0.49,0.76,8,670
11603,"Yambean (jicama), raw",Vegetables and Vegetable Products,90.07,38,0.72,0.09,8.82,4.9,1.80,0.30,4,150
11604,"Yambean (jicama), cooked, boiled, drained, without salt",Vegetables and Vegetable Products,90.07,38,0.72,0.09,8.82,,,0.30,4,135
11605,"Beets, harvard, canned, solids and liquids",Vegetables and Vegetable Products,80.16,73,0.84,0.06,18.18,2.5,,0.76,162,164
11609,"Beets, pickled, canned, solids and liquids",Vegetables and Vegetable Products,81.88,65,0.80,0.08,16.28,2.6,13.59,0.96,264,148
11613,"Borage, raw",Vegetables and Vegetable Products,93.00,21,1.80,0.70,3.06,,,1.44,80,470
11614,"Borage, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.88,25,2.09,0.81,3.55,,,1.67,88,491
11615,"Chives, freeze-dried",Vegetables and Vegetable Products,2.00,311,21.20,3.50,64.29,26.2,,9.01,70,2960
11616,"Dock, raw",Vegetables and Vegetable Products,93.00,22,2.00,0.70,3.20,2.9,,1.10,4,390
11617,"Dock, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.60,20,1.83,0.64,2.93,2.6,,1.01,3,321
11618,"Eppaw, raw",Vegetables and Vegetable Products,60.00,150,4.60,1.80,31.68,,,1.92,12,340
11620,"Drumstick pods, raw",Vegetables and Vegetable Products,88.20,37,2.10,0.20,8.53,3.2,,0.97,42,461
11621,"Drumstick pods, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,88.42,36,2.09,0.19,8.18,4.2,,1.12,43,457
11622,"Kale, scotch, raw",Vegetables and Vegetable Products,87.00,42,2.80,0.60,8.32,1.7,,1.28,70,450
11623,"Kale, scotch, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.20,28,1.90,0.41,5.63,1.2,,0.87,45,274
11624,"Leeks, (bulb and lower-leaf portion), freeze-dried",Vegetables and Vegetable Products,2.00,321,15.20,2.10,74.65,10.4,,6.05,35,2400
11625,"Parsley, freeze-dried",Vegetables and Vegetable Products,2.00,271,31.30,5.20,42.38,32.7,,19.12,391,6300
11626,"Beans, mung, mature seeds, sprouted, canned, drained solids",Vegetables and Vegetable Products,96.10,12,1.40,0.06,2.14,0.8,1.34,0.30,140,27
11632,"Peppers, jalapeno, canned, solids and liquids",Vegetables and Vegetable Products,88.89,27,0.92,0.94,4.74,2.6,2.14,4.51,1671,193
11634,"Peppers, sweet, green, freeze-dried",Vegetables and Vegetable Products,2.00,314,17.90,3.00,68.70,21.3,38.48,8.40,193,3170
11637,"Radishes, white icicle, raw",Vegetables and Vegetable Products,95.37,14,1.10,0.10,2.63,1.4,,0.80,16,280
11640,"Shallots, freeze-dried",Vegetables and Vegetable Products,2.00,348,12.30,0.50,80.70,15.7,38.16,4.50,59,1650
11641,"Squash, summer, all varieties, raw",Vegetables and Vegetable Products,94.64,16,1.21,0.18,3.35,1.1,2.20,0.62,2,262
11642,"Squash, summer, all varieties, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.70,20,0.91,0.31,4.31,1.4,2.59,0.77,1,192
11643,"Squash, winter, all varieties, raw",Vegetables and Vegetable Products,89.76,34,0.95,0.13,8.59,1.5,2.20,0.57,4,350
11644,"Squash, winter, all varieties, cooked, baked, without salt",Vegetables and Vegetable Products,89.21,37,0.89,0.35,8.85,2.8,3.30,0.69,1,241
11645,"Sweet potato, canned, syrup pack, solids and liquids",Vegetables and Vegetable Products,77.39,89,0.98,0.20,20.93,2.5,15.40,0.50,29,185
11647,"Sweet potato, canned, syrup pack, drained solids",Vegetables and Vegetable Products,72.47,108,1.28,0.32,25.36,3.0,5.74,0.57,39,193
11649,"Tomato products, canned, sauce, spanish style",Vegetables and Vegetable Products,89.08,33,1.44,0.27,7.24,1.4,,1.98,472,369
11653,"Beans, pinto, mature seeds, sprouted, raw",Vegetables and Vegetable Products,81.30,62,5.25,0.90,11.60,,,0.95,153,307
11654,"Beans, pinto, mature seeds, sprouted, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,93.39,22,1.86,0.32,4.10,,,0.34,51,98
11655,"Carrot juice, canned",Vegetables and Vegetable Products,88.87,40,0.95,0.15,9.28,0.8,3.91,0.75,66,292
11656,"Corn pudding, home prepared",Vegetables and Vegetable Products,72.33,131,4.42,5.04,16.97,1.2,6.59,1.23,282,176
11657,"Potatoes, mashed, home-prepared, whole milk added",Vegetables and Vegetable Products,78.48,83,1.91,0.57,17.57,1.5,1.48,1.46,302,296
11658,Spinach souffle,Vegetables and Vegetable Products,70.73,169,7.89,12.95,5.90,0.7,1.85,2.52,566,231
11659,"Sweet potato, cooked, candied, home-prepared",Vegetables and Vegetable Products,62.75,164,0.89,3.54,32.12,2.1,27.25,0.69,119,178
11660,"Tomatoes, red, ripe, cooked, stewed",Vegetables and Vegetable Products,80.63,79,1.96,2.68,13.05,1.7,,1.68,455,247
11663,"Seaweed, agar, dried",Vegetables and Vegetable Products,8.68,306,6.21,0.30,80.88,7.7,2.97,3.93,102,1125
11666,"Seaweed, spirulina, raw",Vegetables and Vegetable Products,90.67,26,5.92,0.39,2.42,0.4,0.30,0.60,98,127
11667,"Seaweed, spirulina, dried",Vegetables and Vegetable Products,4.68,290,57.47,7.72,23.90,3.6,3.10,6.23,1048,1363
11669,"Seaweed, wakame, raw",Vegetables and Vegetable Products,79.99,45,3.03,0.64,9.14,0.5,0.65,7.20,872,50
11670,"Peppers, hot chili, green, raw",Vegetables and Vegetable Products,87.74,40,2.00,0.20,9.46,1.5,5.10,0.60,7,340
11671,"Potatoes, o'brien, home-prepared",Vegetables and Vegetable Products,79.60,81,2.35,1.28,15.47,,,1.29,217,266
11672,Potato pancakes,Vegetables and Vegetable Products,47.77,268,6.08,14.76,27.81,3.3,1.79,3.59,764,622
11674,"Potato, baked, flesh and skin, without salt",Vegetables and Vegetable Products,74.89,93,2.50,0.13,21.15,2.2,1.18,1.33,10,535
11675,"Potatoes, microwaved, cooked in skin, flesh and skin, without salt",Vegetables and Vegetable Products,72.04,105,2.44,0.10,24.24,2.3,,1.18,8,447
11676,"Radish seeds, sprouted, raw",Vegetables and Vegetable Products,90.07,43,3.81,2.53,3.60,,,0.53,6,86
11677,"Shallots, raw",Vegetables and Vegetable Products,79.80,72,2.50,0.10,16.80,3.2,7.87,0.80,12,334
11683,"Carrot, dehydrated",Vegetables and Vegetable Products,4.00,341,8.10,1.49,79.57,23.6,38.82,6.84,275,2540
11693,"Tomatoes, crushed, canned",Vegetables and Vegetable Products,89.44,32,1.64,0.28,7.29,1.9,4.40,1.35,186,293
11695,"Tomatoes, orange, raw",Vegetables and Vegetable Products,94.78,16,1.16,0.19,3.18,0.9,,0.69,42,212
11696,"Tomatoes, yellow, raw",Vegetables and Vegetable Products,95.28,15,0.98,0.26,2.98,0.7,,0.50,23,258
11697,"Arrowroot, raw",Vegetables and Vegetable Products,80.75,65,4.24,0.20,13.39,1.3,,1.42,26,454
11698,"Chrysanthemum leaves, raw",Vegetables and Vegetable Products,91.40,24,3.36,0.56,3.01,3.0,,1.67,118,567
11707,"Asparagus, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,94.32,15,1.80,0.18,2.48,1.0,1.00,1.22,26,172
11715,"Lima beans, immature seeds, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,81.17,71,4.07,0.29,13.33,3.6,0.93,1.14,4,285
11722,"Beans, snap, yellow, raw",Vegetables and Vegetable Products,90.27,31,1.82,0.12,7.13,3.4,,0.66,6,209
11724,"Beans, snap, yellow, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,89.22,35,1.89,0.28,7.88,3.3,1.55,0.73,3,299
11726,"Beans, snap, green, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,94.68,15,0.80,0.10,3.50,1.5,,0.92,14,92
11727,"Beans, snap, yellow, canned, regular pack, solids and liquids",Vegetables and Vegetable Products,94.68,15,0.80,0.10,3.50,1.5,,0.92,259,98
11728,"Beans, snap, yellow, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,94.68,15,0.80,0.10,3.50,1.5,,0.92,14,98
11729,"Beans, snap, green, canned, no salt added, drained solids",Vegetables and Vegetable Products,93.12,21,1.26,0.37,4.25,2.5,1.31,1.00,2,106
11730,"Beans, snap, yellow, frozen, all styles, unprepared",Vegetables and Vegetable Products,89.88,33,1.80,0.21,7.58,2.8,,0.53,3,186
11732,"Beans, snap, yellow, frozen, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.42,28,1.49,0.17,6.45,3.0,1.23,0.47,9,126
11735,"Beets, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,91.62,28,0.80,0.07,6.57,1.2,5.38,0.94,21,142
11739,"Broccoli, leaves, raw",Vegetables and Vegetable Products,90.69,28,2.98,0.35,5.24,,,0.92,27,325
11740,"Broccoli, flower clusters, raw",Vegetables and Vegetable Products,90.69,28,2.98,0.35,5.24,,,0.92,27,325
11741,"Broccoli, stalks, raw",Vegetables and Vegetable Products,90.69,28,2.98,0.35,5.24,,,0.92,27,325
11749,"Cabbage, common (danish, domestic, and pointed types), freshly harvest, raw",Vegetables and Vegetable Products,92.52,24,1.21,0.18,5.37,2.3,,0.72,18,246
11750,"Cabbage, common (danish, domestic, and pointed types), stored, raw",Vegetables and Vegetable Products,92.52,24,1.21,0.18,5.37,2.3,,0.72,18,246
11758,"Carrots, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,92.99,23,0.59,0.14,5.36,1.8,2.46,0.92,34,158
11759,"Carrots, canned, no salt added, drained solids",Vegetables and Vegetable Products,92.95,25,0.64,0.19,5.54,1.5,2.48,0.68,42,179
11771,"Corn, sweet, yellow, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,82.61,61,1.95,0.77,13.86,1.7,3.18,0.80,12,136
11772,"Corn, sweet, yellow, canned, cream style, no salt added",Vegetables and Vegetable Products,78.73,72,1.74,0.42,18.13,1.2,3.23,0.98,3,134
11773,"Corn, sweet, yellow, canned, vacuum pack, no salt added",Vegetables and Vegetable Products,76.58,79,2.41,0.50,19.44,2.0,3.56,1.07,3,186
11812,"Peas, green, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,85.92,53,3.19,0.30,9.75,3.3,3.20,0.84,9,100
11813,"Peas, green, canned, no salt added, drained solids",Vegetables and Vegetable Products,81.70,69,4.42,0.35,12.58,4.1,4.16,0.97,2,173
11816,"Peas and carrots, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,88.15,38,2.17,0.27,8.48,3.3,2.83,0.93,4,100
11819,"Peppers, hot chili, red, raw",Vegetables and Vegetable Products,88.02,40,1.87,0.44,8.81,1.5,5.30,0.87,9,322
11820,"Peppers, hot chili, red, canned, excluding seeds, solids and liquids",Vegetables and Vegetable Products,92.50,21,0.90,0.10,5.10,1.3,3.32,1.40,1173,187
11821,"Peppers, sweet, red, raw",Vegetables and Vegetable Products,92.21,31,0.99,0.30,6.03,2.1,4.20,0.47,4,211
11823,"Peppers, sweet, red, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,91.87,28,0.92,0.20,6.70,1.2,4.39,0.31,2,166
11840,"Potatoes, frozen, french fried, par fried, cottage-cut, prepared, heated in oven, with salt",Vegetables and Vegetable Products,52.90,218,3.44,8.20,34.03,3.2,,1.43,281,480
11841,"Potatoes, french fried, all types, salt not added in processing, frozen, oven-heated",Vegetables and Vegetable Products,61.51,172,2.66,5.22,28.71,2.6,0.28,1.90,32,451
11842,"Potatoes, french fried, all types, salt not added in processing, frozen, as purchased",Vegetables and Vegetable Products,66.61,150,2.24,4.66,24.81,1.9,0.20,1.68,23,408
11843,"Potatoes, au gratin, home-prepared from recipe using margarine",Vegetables and Vegetable Products,74.00,132,5.06,7.59,11.27,1.8,,2.09,433,396
11844,"Potatoes, scalloped, home-prepared with margarine",Vegetables and Vegetable Products,80.94,88,2.87,3.68,10.78,1.9,,1.73,335,378
11846,"Pumpkin, canned, with salt",Vegetables and Vegetable Products,89.97,34,1.10,0.28,8.09,2.9,3.30,0.56,241,206
11855,"Spinach, canned, no salt added, solids and liquids",Vegetables and Vegetable Products,93.22,19,2.11,0.37,2.92,2.2,,1.38,75,230
11885,"Tomatoes, red, ripe, canned, packed in tomato juice, no salt added",Vegetables and Vegetable Products,94.28,17,0.78,0.13,4.00,1.0,2.38,0.81,10,188
11886,"Tomato juice, canned, without salt added",Vegetables and Vegetable Products,93.90,17,0.76,0.05,4.24,0.4,3.56,1.05,10,229
11887,"Tomato products, canned, paste, with salt added",Vegetables and Vegetable Products,73.50,82,4.32,0.47,18.91,4.1,12.18,2.80,790,1014
11888,"Tomato products, canned, puree, with salt added",Vegetables and Vegetable Products,87.88,38,1.65,0.21,8.98,1.9,4.83,1.28,202,439
11900,"Corn, sweet, white, raw",Vegetables and Vegetable Products,75.96,86,3.22,1.18,19.02,2.7,3.22,0.62,15,270
11901,"Corn, sweet, white, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,72.84,97,3.34,1.41,21.71,2.7,7.73,0.70,3,252
11903,"Corn, sweet, white, canned, whole kernel, regular pack, solids and liquids",Vegetables and Vegetable Products,81.34,64,1.95,0.50,15.41,1.7,,0.80,213,164
11904,"Corn, sweet, white, canned, whole kernel, no salt added, solids and liquids",Vegetables and Vegetable Products,81.34,64,1.95,0.50,15.41,0.7,,0.80,12,164
11905,"Corn, sweet, white, canned, whole kernel, drained solids",Vegetables and Vegetable Products,76.92,81,2.62,1.00,18.59,2.0,2.40,0.87,323,195
11906,"Corn, sweet, white, canned, cream style, regular pack",Vegetables and Vegetable Products,78.24,74,1.74,0.42,18.62,1.2,2.21,0.98,261,119
11907,"Corn, sweet, white, canned, cream style, no salt added",Vegetables and Vegetable Products,78.73,72,1.74,0.42,18.13,1.2,2.21,0.98,3,134
11908,"Corn, sweet, white, canned, vacuum pack, regular pack",Vegetables and Vegetable Products,76.58,79,2.41,0.50,19.44,2.0,,1.07,272,186
11909,"Corn, sweet, white, canned, vacuum pack, no salt added",Vegetables and Vegetable Products,76.58,79,2.41,0.50,19.44,2.0,,1.07,3,186
11910,"Corn, sweet, white, frozen, kernels cut off cob, unprepared",Vegetables and Vegetable Products,75.00,88,3.02,0.77,20.73,2.9,9.09,0.48,3,213
11911,"Corn, sweet, white, frozen, kernels cut off cob, boiled, drained, without salt",Vegetables and Vegetable Products,76.73,80,2.75,0.43,19.56,2.4,3.12,0.53,5,147
11913,"Corn, sweet, white, frozen, kernels on cob, unprepared",Vegetables and Vegetable Products,71.79,98,3.28,0.78,23.50,2.8,,0.65,5,294
11914,"Corn, sweet, white, frozen, kernels on cob, cooked, boiled, drained, without salt",Vegetables and Vegetable Products,73.20,94,3.11,0.74,22.33,2.1,,0.62,4,251
11916,"Peppers, sweet, red, canned, solids and liquids",Vegetables and Vegetable Products,91.25,18,0.80,0.30,3.90,1.2,,3.75,1369,146
11917,"Peppers, sweet, red, frozen, chopped, unprepared",Vegetables and Vegetable Products,93.96,20,1.08,0.21,4.45,1.6,3.26,0.30,5,91
11918,"Peppers, sweet, red, frozen, chopped, boiled, drained, without salt",Vegetables and Vegetable Products,94.70,16,0.95,0.18,3.31,0.8,2.86,0.86,4,72
11921,"Peppers, sweet, red, sauteed",Vegetables and Vegetable Products,78.95,133,1.04,12.75,6.57,1.8,4.28,0.70,21,193
11929,"Potatoes, mashed, prepared from granules, without milk, whole milk and margarine",Vegetables and Vegetable Products,77.48,108,2.05,4.93,14.40,2.2,,1.14,263,145
11930,"Potatoes, mashed, dehydrated, prepared from flakes without milk, whole milk and margarine added",Vegetables and Vegetable Products,76.30,113,1.90,5.60,15.02,2.3,,1.18,332,233
11931,"Peppers, sweet, red, freeze-dried",Vegetables and Vegetable Products,2.00,314,17.90,3.00,68.70,21.3,40.77,8.40,193,3170
11932,"Beans, snap, yellow, canned, regular pack, drained solids",Vegetables and Vegetable Products,93.30,20,1.15,0.10,4.50,1.3,0.96,0.95,251,109
11933,"Beans, snap, yellow, canned, no salt added, drained solids",Vegetables and Vegetable Products,93.30,20,1.15,0.10,4.50,1.3,0.96,0.95,2,109
11934,"Potatoes, mashed, home-prepared, whole milk and butter added",Vegetables and Vegetable Products,75.61,113,1.86,4.22,16.81,1.5,1.43,1.50,317,284
11935,Catsup,Vegetables and Vegetable Products,69.19,112,1.25,0.18,26.23,0.3,21.71,3.15,907,315
11937,"Pickles, cucumber, dill or kosher dill",Vegetables and Vegetable Products,94.33,12,0.60,0.14,2.59,1.1,1.31,2.34,875,92
11939,"Mushrooms, portabella, exposed to ultraviolet light, grilled",Vegetables and Vegetable Products,90.66,29,3.28,0.58,4.44,2.2,2.26,1.05,11,437
11940,"Pickles, cucumber, sweet (includes bread and butter pickles)",Vegetables and Vegetable Products,76.20,91,0.58,0.41,21.15,1.0,18.27,1.65,457,100
11941,"Pickles, cucumber, sour",Vegetables and Vegetable Products,94.08,11,0.33,0.20,2.26,1.2,1.06,3.13,1208,23
11943,"Pimento, canned",Vegetables and Vegetable Products,93.10,23,1.10,0.30,5.10,1.9,2.71,0.40,14,158
11944,"Pickle relish, hot dog",Vegetables and Vegetable Products,71.65,91,1.50,0.46,23.35,1.5,,3.04,1091,78
11945,"Pickle relish, sweet",Vegetables and Vegetable Products,62.07,130,0.37,0.47,35.06,1.1,29.13,2.03,811,25
11946,"Pickles, cucumber, sour, low sodium",Vegetables and Vegetable Products,94.08,11,0.33,0.20,2.26,1.2,1.06,3.13,18,23
11947,"Pickles, cucumber, dill, low sodium",Vegetables and Vegetable Products,91.67,18,0.62,0.19,4.13,1.2,1.92,3.40,18,116
11948,"Pickles, cucumber, sweet, low sodium (includes bread and butter pickles)",Vegetables and Vegetable Products,65.26,122,0.37,0.26,33.73,1.1,26.68,0.38,18,32
11949,"Catsup, low sodium",Vegetables and Vegetable Products,69.19,96,1.25,0.18,25.72,0.3,21.71,3.66,20,315
11950,"Mushrooms, enoki, raw",Vegetables and Vegetable Products,88.34,37,2.66,0.29,7.81,2.7,0.22,0.91,3,359
11951,"Peppers, sweet, yellow, raw",Vegetables and Vegetable Products,92.02,27,1.00,0.21,6.32,0.9,,0.45,2,212
11952,"Radicchio, raw",Vegetables and Vegetable Products,93.14,23,1.43,0.25,4.48,0.9,0.60,0.70,22,302
11953,"Squash, zucchini, baby, raw",Vegetables and Vegetable Products,92.73,21,2.71,0.40,3.11,1.1,,1.05,3,459
11954,"Tomatillos, raw",Vegetables and Vegetable Products,91.63,32,0.96,1.02,5.84,1.9,3.93,0.55,1,268
11955,"Tomatoes, sun-dried",Vegetables and Vegetable Products,14.56,258,14.11,2.97,55.76,12.3,37.59,12.60,247,3427
11956,"Tomatoes, sun-dried, packed in oil, drained",Vegetables and Vegetable Products,53.83,213,5.06,14.08,23.33,5.8,,3.70,266,1565
11957,"Fennel, bulb, raw",Vegetables and Vegetable Products,90.21,31,1.24,0.20,7.30,3.1,3.93,1.05,52,414
11958,"Pickle relish, hamburger",Vegetables and Vegetable Products,61.12,129,0.63,0.54,34.48,3.2,,3.22,1096,76
11959,"Arugula, raw",Vegetables and Vegetable Products,91.71,25,2.58,0.66,3.65,1.6,2.05,1.40,27,369
11960,"Carrots, baby, raw",Vegetables and Vegetable Products,90.35,35,0.64,0.13,8.24,2.9,4.76,0.63,78,237
11961,"Hearts of palm, canned",Vegetables and Vegetable Products,90.20,28,2.52,0.62,4.62,2.4,,2.04,426,177
11962,"Peppers, hot chile, sun-dried",Vegetables and Vegetable Products,7.15,324,10.58,5.81,69.86,28.7,41.06,6.60,91,1870
11963,"Nopales, raw",Vegetables and Vegetable Products,94.12,16,1.32,0.09,3.33,2.2,1.15,1.14,21,257
11964,"Nopales, cooked, without salt",Vegetables and Vegetable Products,94.31,15,1.35,0.05,3.28,2.0,1.12,1.01,20,195
11965,"Cauliflower, green, raw",Vegetables and Vegetable Products,89.79,31,2.95,0.30,6.09,3.2,3.03,0.88,23,300
11967,"Cauliflower, green, cooked, no salt added",Vegetables and Vegetable Products,89.47,32,3.04,0.31,6.28,3.3,,0.90,23,278
11969,"Broccoli, chinese, cooked",Vegetables and Vegetable Products,93.54,22,1.14,0.72,3.81,2.5,0.84,0.79,7,261
11970,"Cabbage, napa, cooked",Vegetables and Vegetable Products,96.33,12,1.10,0.17,2.23,,,0.17,11,87
11972,"Lemon grass (citronella), raw",Vegetables and Vegetable Products,70.58,99,1.82,0.49,25.31,,,1.80,6,723
11973,"Beans, fava, in pod, raw",Vegetables and Vegetable Products,72.60,88,7.92,0.73,17.63,7.5,9.21,1.12,25,332
11974,"Grape leaves, raw",Vegetables and Vegetable Products,73.32,93,5.60,2.12,17.31,11.0,6.30,1.65,9,272
11975,"Grape leaves, canned",Vegetables and Vegetable Products,76.10,69,4.27,1.97,11.71,9.9,,5.95,2853,29
11976,"Pepper, banana, raw",Vegetables and Vegetable Products,91.81,27,1.66,0.45,5.35,3.4,1.95,0.73,13,256
11977,"Peppers, serrano, raw",Vegetables and Vegetable Products,90.25,32,1.74,0.44,6.70,3.7,3.83,0.87,10,305
11978,"Peppers, ancho, dried",Vegetables and Vegetable Products,22.63,281,11.86,8.20,51.42,21.6,,5.89,43,2411
11979,"Peppers, jalapeno, raw",Vegetables and Vegetable Products,91.69,29,0.91,0.37,6.50,2.8,4.12,0.53,3,248
11980,"Peppers, chili, green, canned",Vegetables and Vegetable Products,93.25,21,0.72,0.27,4.60,1.7,,1.31,397,113
11981,"Peppers, hungarian, raw",Vegetables and Vegetable Products,91.51,29,0.80,0.41,6.70,1.0,3.53,0.58,1,202
11982,"Peppers, pasilla, dried",Vegetables and Vegetable Products,14.84,345,12.35,15.85,51.13,26.8,,5.82,89,2222
11983,"Pickles, chowchow, with cauliflower onion mustard, sweet",Vegetables and Vegetable Products,68.90,121,1.50,0.90,26.64,1.5,23.88,2.06,527,200
11984,"Epazote, raw",Vegetables and Vegetable Products,89.21,32,0.33,0.52,7.44,3.8,,2.50,43,633
11985,"Fireweed, leaves, raw",Vegetables and Vegetable Products,70.78,103,4.71,2.75,19.22,10.6,,2.54,34,494
11986,"Malabar spinach, cooked",Vegetables and Vegetable Products,92.50,23,2.98,0.78,2.71,2.1,,1.04,55,256
11987,"Mushrooms, oyster, raw",Vegetables and Vegetable Products,89.18,33,3.31,0.41,6.09,2.3,1.11,1.01,18,420
11988,"Fungi, Cloud ears, dried",Vegetables and Vegetable Products,14.80,284,9.25,0.73,73.01,70.1,,2.21,35,754
11989,"Mushrooms, straw, canned, drained solids",Vegetables and Vegetable Products,89.88,32,3.83,0.68,4.64,2.5,,0.97,384,78
11990,"Wasabi, root, raw",Vegetables and Vegetable Products,69.11,109,4.80,0.63,23.54,7.8,,1.92,17,568
11991,"Yautia (tannier), raw",Vegetables and Vegetable Products,73.06,98,1.46,0.40,23.63,1.5,,1.45,21,598
11992,"Mushrooms, white, microwaved",Vegetables and Vegetable Products,88.52,35,3.91,0.46,6.04,2.5,0.00,1.08,17,488
11993,"Mushrooms, maitake, raw",Vegetables and Vegetable Products,90.37,31,1.94,0.19,6.97,2.7,2.07,0.53,1,204
11995,"Fiddlehead ferns, raw",Vegetables and Vegetable Products,88.68,34,4.55,0.40,5.54,,,0.83,1,370
11996,"Fiddlehead ferns, frozen, unprepared",Vegetables and Vegetable Products,88.91,34,4.31,0.35,5.74,,,0.69,0,129
11998,"Mushrooms, portabella, exposed to ultraviolet light, raw",Vegetables and Vegetable Products,92.82,22,2.11,0.35,3.87,1.3,2.50,0.85,9,364
12001,"Seeds, breadfruit seeds, raw",Nut and Seed Products,56.27,191,7.40,5.59,29.24,5.2,,1.50,25,941
12003,"Seeds, breadfruit seeds, boiled",Nut and Seed Products,59.30,168,5.30,2.30,32.00,4.8,,1.10,23,875
12004,"Seeds, breadnut tree seeds, raw",Nut and Seed Products,45.00,217,5.97,0.99,46.28,,,1.76,31,1183
12005,"Seeds, breadnut tree seeds, dried",Nut and Seed Products,6.50,367,8.62,1.68,79.39,14.9,,3.81,53,2011
12006,"Seeds, chia seeds, dried",Nut and Seed Products,5.80,486,16.54,30.74,42.12,34.4,,4.80,16,407
12007,"Seeds, cottonseed flour, partially defatted (glandless)",Nut and Seed Products,6.30,359,40.96,6.20,40.54,3.0,,6.00,35,1772
12008,"Seeds, cottonseed flour, low fat (glandless)",Nut and Seed Products,6.90,332,49.83,1.41,36.10,,,5.76,35,1761
12011,"Seeds, cottonseed meal, partially defatted (glandless)",Nut and Seed Products,1.20,367,49.10,4.77,38.43,,,6.50,37,1869
12013,"Seeds, lotus seeds, dried",Nut and Seed Products,14.16,332,15.41,1.97,64.47,,,3.99,5,1368
12014,"Seeds, pumpkin and squash seed kernels, dried",Nut and Seed Products,5.23,559,30.23,49.05,10.71,6.0,1.40,4.78,7,809
12016,"Seeds, pumpkin and squash seed kernels, roasted, without salt",Nut and Seed Products,2.03,574,29.84,49.05,14.71,6.5,1.29,4.37,18,788
12021,"Seeds, safflower seed kernels, dried",Nut and Seed Products,5.62,517,16.18,38.45,34.29,,,5.47,3,687
12022,"Seeds, safflower seed meal, partially defatted",Nut and Seed Products,6.41,342,35.62,2.39,48.73,,,6.85,3,68
12023,"Seeds, sesame seeds, whole, dried",Nut and Seed Products,4.69,573,17.73,49.67,23.45,11.8,0.30,4.45,11,468
12024,"Seeds, sesame seeds, whole, roasted and toasted",Nut and Seed Products,3.30,565,16.96,48.00,25.74,14.0,,6.00,11,475
12029,"Seeds, sesame seed kernels, toasted, without salt added (decorticated)",Nut and Seed Products,5.00,567,16.96,48.00,26.04,16.9,0.48,4.00,39,406
12032,"Seeds, sesame flour, partially defatted",Nut and Seed Products,6.61,382,40.32,11.89,35.14,,,6.05,41,425
12033,"Seeds, sesame flour, low-fat",Nut and Seed Products,7.10,333,50.14,1.75,35.51,,,5.50,39,397
12034,"Seeds, sesame meal, partially defatted",Nut and Seed Products,5.00,567,16.96,48.00,26.04,,,4.00,39,406
12036,"Seeds, sunflower seed kernels, dried",Nut and Seed Products,4.73,584,20.78,51.46,20.00,8.6,2.62,3.02,9,645
12037,"Seeds, sunflower seed kernels, dry roasted, without salt",Nut and Seed Products,1.20,582,19.33,49.80,24.07,11.1,2.73,5.60,3,850
12038,"Seeds, sunflower seed kernels, oil roasted, without salt",Nut and Seed Products,1.54,592,20.06,51.30,22.89,10.6,3.11,4.22,3,483
12039,"Seeds, sunflower seed kernels, toasted, without salt",Nut and Seed Products,1.00,619,17.21,56.80,20.59,11.5,,4.40,3,491
12040,"Seeds, sunflower seed butter, without salt",Nut and Seed Products,0.62,617,17.28,55.20,23.32,5.7,10.54,3.58,3,576
12041,"Seeds, sunflower seed flour, partially defatted",Nut and Seed Products,7.47,326,48.06,1.61,35.83,5.2,,7.04,3,67
12058,"Nuts, acorns, raw",Nut and Seed Products,27.90,387,6.15,23.86,40.75,,,1.35,0,539
12059,"Nuts, acorns, dried",Nut and Seed Products,5.06,509,8.10,31.41,53.66,,,1.78,0,709
12060,"Nuts, acorn flour, full fat",Nut and Seed Products,6.00,501,7.49,30.17,54.65,,,1.69,0,712
12061,"Nuts, almonds",Nut and Seed Products,4.41,579,21.15,49.93,21.55,12.5,4.20,2.97,1,733
12062,"Nuts, almonds, blanched",Nut and Seed Products,4.51,590,21.40,52.52,18.67,9.9,4.63,2.91,19,659
12063,"Nuts, almonds, dry roasted, without salt added",Nut and Seed Products,2.41,598,20.96,52.54,21.01,10.9,4.86,3.07,3,713
12065,"Nuts, almonds, oil roasted, without salt added",Nut and Seed Products,2.80,607,21.23,55.17,17.68,10.5,4.55,3.13,1,699
12071,"Nuts, almond paste",Nut and Seed Products,14.08,458,9.00,27.74,47.81,4.8,36.25,1.37,9,314
12077,"Nuts, beechnuts, dried",Nut and Seed Products,6.60,576,6.20,50.00,33.50,,,3.70,38,1017
12078,"Nuts, brazilnuts, dried, unblanched",Nut and Seed Products,3.48,656,14.32,66.43,12.27,7.5,2.33,3.51,3,659
12084,"Nuts, butternuts, dried",Nut and Seed Products,3.34,612,24.90,56.98,12.05,4.7,,2.73,1,421
12085,"Nuts, cashew nuts, dry roasted, without salt added",Nut and Seed Products,1.70,574,15.31,46.35,32.69,3.0,5.01,3.95,16,565
12086,"Nuts, cashew nuts, oil roasted, without salt added",Nut and Seed Products,3.48,580,16.84,47.77,29.87,3.3,5.01,2.03,13,632
12087,"Nuts, cashew nuts, raw",Nut and Seed Products,5.20,553,18.22,43.85,30.19,3.3,5.91,2.54,12,660
12088,"Nuts, cashew butter, plain, without salt added",Nut and Seed Products,2.96,587,17.56,49.41,27.57,2.0,,2.50,15,546
12093,"Nuts, chestnuts, chinese, raw",Nut and Seed Products,43.95,224,4.20,1.11,49.07,,,1.67,3,447
12094,"Nuts, chestnuts, chinese, dried",Nut and Seed Products,8.90,363,6.82,1.81,79.76,,,2.71,5,726
12095,"Nuts, chestnuts, chinese, boiled and steamed",Nut and Seed Products,61.57,153,2.88,0.76,33.64,,,1.14,2,306
12096,"Nuts, chestnuts, chinese, roasted",Nut and Seed Products,40.20,239,4.48,1.19,52.36,,,1.78,4,477
12097,"Nuts, chestnuts, european, raw, unpeeled",Nut and Seed Products,48.65,213,2.42,2.26,45.54,8.1,,1.13,3,518
12098,"Nuts, chestnuts, european, raw, peeled",Nut and Seed Products,52.00,196,1.63,1.25,44.17,,,0.96,2,484
12099,"Nuts, chestnuts, european, dried, unpeeled",Nut and Seed Products,9.45,374,6.39,4.45,77.31,11.7,,2.40,37,986
12100,"Nuts, chestnuts, european, dried, peeled",Nut and Seed Products,9.00,369,5.01,3.91,78.43,,,3.64,37,991
12101,"Nuts, chestnuts, european, boiled and steamed",Nut and Seed Products,68.15,131,2.00,1.38,27.76,,,0.71,27,715
12104,"Nuts, coconut meat, raw",Nut and Seed Products,46.99,354,3.33,33.49,15.23,9.0,6.23,0.97,20,356
12108,"Nuts, coconut meat, dried (desiccated), not sweetened",Nut and Seed Products,3.00,660,6.88,64.53,23.65,16.3,7.35,1.94,37,543
12109,"Nuts, coconut meat, dried (desiccated), sweetened, flaked, packaged",Nut and Seed Products,15.46,456,3.13,27.99,51.85,9.9,36.75,1.57,285,361
12110,"Nuts, coconut meat, dried (desiccated), sweetened, flaked, canned",Nut and Seed Products,23.27,443,3.35,31.69,40.91,4.5,,0.78,20,324
12114,"Nuts, coconut meat, dried (desiccated), toasted",Nut and Seed Products,1.00,592,5.30,47.00,44.40,,,2.30,37,554
12115,"Nuts, coconut cream, raw (liquid expressed from grated meat)",Nut and Seed Products,53.90,330,3.63,34.68,6.65,2.2,,1.15,4,325
12116,"Nuts, coconut cream, canned, sweetened",Nut and Seed Products,28.97,357,1.17,16.31,53.21,0.2,51.50,0.34,36,101
12117,"Nuts, coconut milk, raw (liquid expressed from grated meat and water)",Nut and Seed Products,67.62,230,2.29,23.84,5.54,2.2,3.34,0.72,15,263
12118,"Nuts, coconut milk, canned (liquid expressed from grated meat and water)",Nut and Seed Products,72.88,197,2.02,21.33,2.81,,,0.97,13,220
12119,"Nuts, coconut water (liquid from coconuts)",Nut and Seed Products,94.99,19,0.72,0.20,3.71,1.1,2.61,0.39,105,250
12120,"Nuts, hazelnuts or filberts",Nut and Seed Products,5.31,628,14.95,60.75,16.70,9.7,4.34,2.29,0,680
12121,"Nuts, hazelnuts or filberts, blanched",Nut and Seed Products,5.79,629,13.70,61.15,17.00,11.0,3.49,2.36,0,658
12122,"Nuts, hazelnuts or filberts, dry roasted, without salt added",Nut and Seed Products,2.52,646,15.03,62.40,17.60,9.4,4.89,2.45,0,755
12127,"Nuts, ginkgo nuts, raw",Nut and Seed Products,55.20,182,4.32,1.68,37.60,,,1.20,7,510
12128,"Nuts, ginkgo nuts, dried",Nut and Seed Products,12.40,348,10.35,2.00,72.45,,,2.80,13,998
12129,"Nuts, ginkgo nuts, canned",Nut and Seed Products,72.95,111,2.29,1.62,22.10,9.3,,1.04,307,180
12130,"Nuts, hickorynuts, dried",Nut and Seed Products,2.65,657,12.72,64.37,18.25,6.4,,2.00,1,436
12131,"Nuts, macadamia nuts, raw",Nut and Seed Products,1.36,718,7.91,75.77,13.82,8.6,4.57,1.14,5,368
12132,"Nuts, macadamia nuts, dry roasted, without salt added",Nut and Seed Products,1.61,718,7.79,76.08,13.38,8.0,4.14,1.14,4,363
12135,"Nuts, mixed nuts, dry roasted, with peanuts, without salt added",Nut and Seed Products,1.75,594,17.30,51.45,25.35,9.0,,4.15,12,597
12137,"Nuts, mixed nuts, oil roasted, with peanuts, without salt added",Nut and Seed Products,2.08,607,20.04,53.95,21.05,7.0,4.15,2.88,5,632
12138,"Nuts, mixed nuts, oil roasted, without peanuts, without salt added",Nut and Seed Products,3.15,615,15.52,56.17,22.27,5.5,,2.89,11,544
12140,"Nuts, formulated, wheat-based, unflavored, with salt added",Nut and Seed Products,2.50,622,13.82,57.70,23.68,5.2,,2.30,505,318
12142,"Nuts, pecans",Nut and Seed Products,3.52,691,9.17,71.97,13.86,9.6,3.97,1.49,0,410
12143,"Nuts, pecans, dry roasted, without salt added",Nut and Seed Products,1.12,710,9.50,74.27,13.55,9.4,4.06,1.56,1,424
12144,"Nuts, pecans, oil roasted, without salt added",Nut and Seed Products,1.13,715,9.20,75.23,13.01,9.5,3.97,1.42,1,392
12145,"Nuts, pilinuts, dried",Nut and Seed Products,2.77,719,10.80,79.55,3.98,,,2.91,3,507
12147,"Nuts, pine nuts, dried",Nut and Seed Products,2.28,673,13.69,68.37,13.08,3.7,3.59,2.59,2,597
12149,"Nuts, pine nuts, pinyon, dried",Nut and Seed Products,5.90,629,11.57,60.98,19.30,10.7,,2.26,72,628
12151,"Nuts, pistachio nuts, raw",Nut and Seed Products,3.91,562,20.27,45.39,27.51,10.3,7.66,2.91,1,1025
12152,"Nuts, pistachio nuts, dry roasted, without salt added",Nut and Seed Products,1.85,567,20.95,44.82,29.38,9.9,7.74,3.00,6,1007
12154,"Nuts, walnuts, black, dried",Nut and Seed Products,4.56,618,24.06,59.00,9.91,6.8,1.10,2.47,2,523
12155,"Nuts, walnuts, english",Nut and Seed Products,4.07,654,15.23,65.21,13.71,6.7,2.61,1.78,2,441
12156,"Nuts, walnuts, glazed",Nut and Seed Products,6.28,500,8.28,35.71,47.59,3.6,32.14,2.13,446,232
12158,"Seeds, breadfruit seeds, roasted",Nut and Seed Products,49.70,207,6.20,2.70,40.10,6.0,,1.30,28,1082
12160,"Seeds, cottonseed kernels, roasted (glandless)",Nut and Seed Products,4.65,506,32.59,36.29,21.90,5.5,,4.58,25,1350
12163,"Seeds, pumpkin and squash seeds, whole, roasted, without salt",Nut and Seed Products,4.50,446,18.55,19.40,53.75,18.4,,3.80,18,919
12166,"Seeds, sesame butter, tahini, from roasted and toasted kernels (most common type)",Nut and Seed Products,3.05,595,17.00,53.76,21.19,9.3,0.49,5.00,115,414
12167,"Nuts, chestnuts, european, roasted",Nut and Seed Products,40.48,245,3.17,2.20,52.96,5.1,10.60,1.20,2,592
12169,"Seeds, sesame butter, paste",Nut and Seed Products,1.60,586,18.08,50.87,24.05,5.5,,5.40,12,582
12170,"Seeds, sesame flour, high-fat",Nut and Seed Products,0.90,526,30.78,37.10,26.62,,,4.60,41,423
12171,"Seeds, sesame butter, tahini, from unroasted kernels (non-chemically removed seed coat)",Nut and Seed Products,3.00,607,17.95,56.44,17.89,9.3,,4.73,1,459
12174,"Seeds, watermelon seed kernels, dried",Nut and Seed Products,5.05,557,28.33,47.37,15.31,,,3.94,99,648
12175,"Nuts, chestnuts, japanese, dried",Nut and Seed Products,9.96,360,5.25,1.24,81.43,,,2.11,34,768
12176,"Nuts, coconut milk, frozen (liquid expressed from grated meat and water)",Nut and Seed Products,71.42,202,1.61,20.80,5.58,,,0.59,12,232
12177,"Nuts, coconut meat, dried (desiccated), creamed",Nut and Seed Products,1.67,684,5.30,69.08,21.52,,,2.44,37,551
12179,"Nuts, coconut meat, dried (desiccated), sweetened, shredded",Nut and Seed Products,12.55,501,2.88,35.49,47.67,4.5,43.17,1.42,262,337
12195,"Nuts, almond butter, plain, without salt added",Nut and Seed Products,1.64,614,20.96,55.50,18.82,10.3,4.43,3.09,7,748
12198,"Seeds, sesame butter, tahini, from raw and stone ground kernels",Nut and Seed Products,3.00,570,17.81,48.00,26.19,9.3,,5.00,74,414
12200,"Nuts, formulated, wheat-based, all flavors except macadamia, without salt",Nut and Seed Products,2.00,647,13.11,62.30,20.79,5.2,,1.80,91,320
12201,"Seeds, sesame seed kernels, dried (decorticated)",Nut and Seed Products,3.75,631,20.45,61.21,11.73,11.6,0.48,2.86,47,370
12202,"Nuts, chestnuts, japanese, raw",Nut and Seed Products,61.41,154,2.25,0.53,34.91,,,0.91,14,329
12203,"Nuts, chestnuts, japanese, boiled and steamed",Nut and Seed Products,86.03,56,0.82,0.19,12.64,,,0.33,5,119
12204,"Nuts, chestnuts, japanese, roasted",Nut and Seed Products,49.90,201,2.97,0.80,45.13,,,1.20,19,427
12205,"Seeds, lotus seeds, raw",Nut and Seed Products,77.00,89,4.13,0.53,17.28,,,1.07,1,367
12206,"Nuts, almonds, honey roasted, unblanched",Nut and Seed Products,1.70,594,18.17,49.90,27.90,13.7,,2.33,130,560
12220,"Seeds, flaxseed",Nut and Seed Products,6.96,534,18.29,42.16,28.88,27.3,1.55,3.72,30,813
12516,"Seeds, pumpkin and squash seed kernels, roasted, with salt added",Nut and Seed Products,2.03,574,29.84,49.05,14.71,6.5,1.29,4.37,256,788
12529,"Seeds, sesame seed kernels, toasted, with salt added (decorticated)",Nut and Seed Products,5.00,567,16.96,48.00,26.04,16.9,0.48,4.00,588,406
12537,"Seeds, sunflower seed kernels, dry roasted, with salt added",Nut and Seed Products,1.20,582,19.33,49.80,24.07,9.0,2.73,5.60,368,850
12538,"Seeds, sunflower seed kernels, oil roasted, with salt added",Nut and Seed Products,1.54,592,20.06,51.30,22.89,10.6,3.11,4.22,733,483
12539,"Seeds, sunflower seed kernels, toasted, with salt added",Nut and Seed Products,1.00,619,17.21,56.80,20.59,11.5,,4.40,613,491
12540,"Seeds, sunflower seed butter, with salt added",Nut and Seed Products,0.62,617,17.28,55.20,23.32,5.7,10.54,3.58,331,576
12563,"Nuts, almonds, dry roasted, with salt added",Nut and Seed Products,2.41,598,20.96,52.54,21.01,10.9,4.86,3.07,656,713
12565,"Nuts, almonds, oil roasted, with salt added",Nut and Seed Products,2.80,607,21.23,55.17,17.68,10.5,4.55,3.13,339,699
12567,"Nuts, almonds, oil roasted, with salt added, smoke flavor",Nut and Seed Products,2.80,607,21.43,55.89,17.86,10.7,3.57,2.03,548,679
12585,"Nuts, cashew nuts, dry roasted, with salt added",Nut and Seed Products,1.70,574,15.31,46.35,32.69,3.0,5.01,3.95,640,565
12586,"Nuts, cashew nuts, oil roasted, with salt added",Nut and Seed Products,2.34,581,16.84,47.77,30.16,3.3,5.01,2.89,308,632
12588,"Nuts, cashew butter, plain, with salt added",Nut and Seed Products,2.96,587,17.56,49.41,27.57,2.0,5.01,2.50,406,546
12632,"Nuts, macadamia nuts, dry roasted, with salt added",Nut and Seed Products,1.61,716,7.79,76.08,12.83,8.0,4.14,1.70,353,363
12635,"Nuts, mixed nuts, dry roasted, with peanuts, with salt added",Nut and Seed Products,1.75,594,17.30,51.45,25.35,9.0,4.80,4.15,345,693
12637,"Nuts, mixed nuts, oil roasted, with peanuts, with salt added",Nut and Seed Products,2.08,607,20.04,53.95,21.05,7.0,4.15,2.88,273,632
12638,"Nuts, mixed nuts, oil roasted, without peanuts, with salt added",Nut and Seed Products,3.15,615,15.52,56.17,22.27,5.5,4.38,2.89,306,544
12643,"Nuts, pecans, dry roasted, with salt added",Nut and Seed Products,1.12,710,9.50,74.27,13.55,9.4,4.06,1.56,383,424
12644,"Nuts, pecans, oil roasted, with salt added",Nut and Seed Products,1.13,715,9.20,75.23,13.01,9.5,3.97,1.42,393,392
12652,"Nuts, pistachio nuts, dry roasted, with salt added",Nut and Seed Products,1.79,564,20.95,44.82,28.66,9.9,7.74,3.79,428,1007
12663,"Seeds, pumpkin and squash seeds, whole, roasted, with salt added",Nut and Seed Products,4.50,446,18.55,19.40,53.75,18.4,,3.80,2541,919
12695,"Nuts, almond butter, plain, with salt added",Nut and Seed Products,1.64,614,20.96,55.50,18.82,10.3,6.27,3.09,227,748
12698,"Seeds, sesame butter, tahini, type of kernels unspecified",Nut and Seed Products,3.00,592,17.40,53.01,21.50,4.7,,5.09,35,459
12737,"Nuts, mixed nuts, oil roasted, with peanuts, lightly salted",Nut and Seed Products,2.08,607,20.04,53.95,21.05,7.0,4.15,2.88,161,632
12738,"Nuts, mixed nuts, oil roasted, without peanuts, lightly salted",Nut and Seed Products,3.15,607,17.86,50.00,25.00,7.1,5.21,3.18,143,714
13023,"Beef, brisket, whole, separable lean only, all grades, raw",Beef Products,70.29,155,20.72,7.37,0.00,0.0,0.00,1.02,79,330
13047,"Beef, grass-fed, ground, raw",Beef Products,67.13,192,19.42,12.73,0.00,0.0,0.00,1.71,68,289
13285,"Beef, chuck, under blade pot roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,58.22,216,30.54,10.46,0.00,0.0,0.00,1.39,65,306
13293,"Beef, chuck, under blade pot roast or steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,71.41,140,21.13,6.07,0.31,0.0,0.00,1.08,81,369
13317,"Beef, ground, patties, frozen, cooked, broiled",Beef Products,53.91,295,23.05,21.83,0.00,0.0,0.00,0.90,77,305
13321,"Beef, variety meats and by-products, heart, raw",Beef Products,77.11,112,17.72,3.94,0.14,0.0,0.00,1.10,98,287
13322,"Beef, variety meats and by-products, heart, cooked, simmered",Beef Products,65.67,165,28.48,4.73,0.15,0.0,0.00,0.97,59,219
13323,"Beef, variety meats and by-products, kidneys, raw",Beef Products,77.89,99,17.40,3.09,0.29,0.0,0.00,1.33,182,262
13324,"Beef, variety meats and by-products, kidneys, cooked, simmered",Beef Products,66.88,158,27.27,4.65,0.00,0.0,0.00,1.31,94,135
13325,"Beef, variety meats and by-products, liver, raw",Beef Products,70.81,135,20.36,3.63,3.89,0.0,0.00,1.31,69,313
13326,"Beef, variety meats and by-products, liver, cooked, braised",Beef Products,58.81,191,29.08,5.26,5.13,0.0,0.00,1.74,79,352
13327,"Beef, variety meats and by-products, liver, cooked, pan-fried",Beef Products,62.01,175,26.52,4.68,5.16,0.0,0.00,1.63,77,351
13335,"Beef, variety meats and by-products, suet, raw",Beef Products,4.00,854,1.50,94.00,0.00,0.0,0.00,0.10,7,16
13339,"Beef, variety meats and by-products, tongue, raw",Beef Products,64.53,224,14.90,16.09,3.68,0.0,,0.80,69,315
13340,"Beef, variety meats and by-products, tongue, cooked, simmered",Beef Products,57.87,284,19.29,22.30,0.00,0.0,0.00,0.69,65,184
13341,"Beef, variety meats and by-products, tripe, raw",Beef Products,84.16,85,12.07,3.69,0.00,0.0,0.00,0.55,97,67
13342,"Beef, sandwich steaks, flaked, chopped, formed and thinly sliced, raw",Beef Products,56.00,309,16.50,27.00,0.00,0.0,0.00,0.80,68,233
13344,"Beef, cured, breakfast strips, raw or unheated",Beef Products,45.20,406,12.50,38.80,0.70,0.0,,2.80,955,153
13345,"Beef, cured, breakfast strips, cooked",Beef Products,26.20,449,31.30,34.40,1.40,0.0,0.00,6.70,2253,412
13346,"Beef, cured, corned beef, brisket, raw",Beef Products,66.56,198,14.68,14.90,0.14,0.0,,3.73,1217,297
13347,"Beef, cured, corned beef, brisket, cooked",Beef Products,59.79,251,18.17,18.98,0.47,0.0,0.00,2.60,973,145
13348,"Beef, cured, corned beef, canned",Sausages and Luncheon Meats,57.72,250,27.10,14.93,0.00,0.0,0.00,2.90,897,136
13350,"Beef, cured, dried",Sausages and Luncheon Meats,53.80,153,31.10,1.94,2.76,0.0,2.70,10.40,2790,235
13353,"Beef, cured, luncheon meat, jellied",Sausages and Luncheon Meats,74.60,111,19.00,3.30,0.00,0.0,,3.40,1322,402
13355,"Beef, cured, pastrami",Sausages and Luncheon Meats,69.53,147,21.80,5.82,0.36,0.0,0.10,3.40,1078,210
13356,"Beef, chuck, under blade center steak, boneless, Denver Cut, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,69.19,170,19.42,9.99,0.49,0.0,0.00,0.91,77,321
13357,"Beef, cured, sausage, cooked, smoked",Sausages and Luncheon Meats,53.56,312,14.11,26.91,2.42,0.0,,3.00,1131,176
13358,"Beef, cured, smoked, chopped beef",Sausages and Luncheon Meats,68.93,133,20.19,4.42,1.86,0.0,,4.60,1258,377
13360,"Beef, cured, thin-sliced beef",Sausages and Luncheon Meats,58.10,176,28.11,3.84,5.71,0.0,0.00,4.24,1439,429
13361,"Beef, composite of trimmed retail cuts, separable lean and fat, trimmed to 0"" fat, all grades, cooked",Beef Products,53.93,273,27.33,17.37,0.00,0.0,0.00,1.13,62,323
13364,"Beef, composite of trimmed retail cuts, separable lean only, trimmed to 0"" fat, all grades, cooked",Beef Products,59.33,211,29.88,9.28,0.00,0.0,0.00,1.23,66,355
13367,"Beef, brisket, whole, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,51.54,291,26.79,19.52,0.00,0.0,0.00,0.95,65,259
13368,"Beef, brisket, whole, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.71,218,29.75,10.08,0.00,0.0,0.00,1.04,70,285
13369,"Beef, brisket, flat half, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,58.90,213,32.90,8.01,0.00,0.0,0.00,1.03,54,264
13370,"Beef, brisket, flat half, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,59.55,205,33.26,6.99,0.00,0.0,0.00,1.04,54,267
13371,"Beef, brisket, point half, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,46.05,358,23.53,28.50,0.00,0.0,0.00,0.84,68,233
13372,"Beef, brisket, point half, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,55.70,244,28.05,13.80,0.00,0.0,0.00,0.98,77,273
13373,"Beef, chuck, arm pot roast, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,51.90,297,28.94,19.17,0.00,0.0,0.00,0.90,47,231
13382,"Beef, chuck, blade roast, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,54.80,253,31.06,13.30,0.00,0.0,0.00,0.99,71,263
13388,"Beef, rib, large end (ribs 6-9), separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,57.90,238,27.53,13.40,0.00,0.0,0.00,1.08,73,357
13391,"Beef, rib, small end (ribs 10-12), separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,57.52,249,27.27,14.74,0.00,0.0,0.00,1.10,56,340
13394,"Beef, rib, small end (ribs 10-12), separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,62.59,193,29.41,7.53,0.00,0.0,0.00,1.18,61,376
13398,"Beef, round, bottom round, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.33,223,33.56,8.86,0.00,0.0,0.00,1.00,44,271
13399,"Beef, round, bottom round, roast, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.46,187,27.42,7.72,0.00,0.0,0.00,1.09,36,223
13407,"Beef, round, bottom round, steak, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,58.09,214,34.00,7.67,0.00,0.0,0.00,1.01,44,278
13408,"Beef, round, bottom round, roast, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,65.37,177,27.76,6.48,0.00,0.0,0.00,1.10,36,228
13415,"Beef, round, eye of round roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,65.05,167,29.66,4.46,0.00,0.0,0.00,1.21,67,401
13418,"Beef, round, eye of round roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,65.35,163,29.85,3.90,0.00,0.0,0.00,1.27,67,404
13421,"Beef, round, tip round, roast, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.67,188,26.79,8.21,0.00,0.0,0.00,1.11,35,217
13424,"Beef, round, tip round, roast, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,66.75,174,27.53,6.20,0.00,0.0,0.00,0.81,36,226
13428,"Beef, round, top round, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.90,209,35.62,6.31,0.00,0.0,0.00,1.72,45,330
13434,"Beef, round, top round, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,58.70,199,36.12,5.00,0.00,0.0,0.00,1.75,45,334
13439,"Beef, loin, tenderloin steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,60.38,211,30.50,8.91,0.00,0.0,0.00,1.37,57,350
13442,"Beef, loin, tenderloin steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,60.76,198,30.70,8.32,0.00,0.0,0.00,1.38,59,390
13445,"Beef, loin, top loin steak, boneless, lip off, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,59.98,223,28.57,11.15,0.00,0.0,0.00,1.12,59,366
13448,"Beef, loin, top loin steak, boneless, lip off, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,61.74,202,29.53,8.41,0.00,0.0,0.00,1.15,61,376
13451,"Beef, top sirloin, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,60.33,212,29.33,9.67,0.00,0.0,0.00,1.26,61,368
13454,"Beef, top sirloin, steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,62.98,183,30.55,5.79,0.00,0.0,0.00,1.31,64,393
13459,"Beef, short loin, porterhouse steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,54.66,276,23.96,19.27,0.00,0.0,0.00,1.17,65,299
13460,"Beef, short loin, porterhouse steak, separable lean and fat, trimmed to 0"" fat, USDA choice, cooked, broiled",Beef Products,53.95,283,23.61,20.15,0.00,0.0,0.00,1.08,65,278
13463,"Beef, short loin, porterhouse steak, separable lean and fat, trimmed to 0"" fat, USDA select, cooked, broiled",Beef Products,55.69,267,24.47,17.98,0.00,0.0,0.00,1.29,65,330
13464,"Beef, short loin, porterhouse steak, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.32,155,22.32,6.60,0.00,0.0,0.00,1.02,51,274
13466,"Beef, short loin, porterhouse steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,60.38,212,26.07,11.18,0.00,0.0,0.00,1.28,69,328
13473,"Beef, short loin, t-bone steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,57.78,247,24.18,15.93,0.00,0.0,0.00,1.10,67,302
13474,"Beef, short loin, t-bone steak, separable lean and fat, trimmed to 0"" fat, USDA choice, cooked, broiled",Beef Products,56.97,258,24.05,17.26,0.00,0.0,0.00,1.08,67,300
13477,"Beef, short loin, t-bone steak, separable lean and fat, trimmed to 0"" fat, USDA select, cooked, broiled",Beef Products,58.97,230,24.38,14.00,0.00,0.0,0.00,1.12,68,305
13478,"Beef, short loin, t-bone steak, bone-in, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.73,153,22.22,6.50,0.00,0.0,0.00,1.01,42,267
13480,"Beef, short loin, t-bone steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,63.00,189,25.99,8.69,0.00,0.0,0.00,1.18,71,327
13486,"Beef, round, tip round, roast, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.01,151,20.48,7.01,0.00,0.0,0.00,1.00,55,318
13491,"Beef, round, top round steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,64.28,162,30.09,3.77,0.00,0.0,0.00,1.29,75,435
13494,"Beef, ground, 70% lean meat / 30% fat, crumbles, cooked, pan-browned",Beef Products,55.78,270,25.56,17.86,0.00,0.0,0.00,1.04,96,328
13496,"Beef, ground, 70% lean meat / 30% fat, patty cooked, pan-broiled",Beef Products,59.36,238,22.86,15.54,0.00,0.0,0.00,1.04,92,308
13497,"Beef, ground, 70% lean meat / 30% fat, patty, cooked, broiled",Beef Products,56.26,273,25.38,18.21,0.00,0.0,0.00,0.97,81,275
13498,"Beef, ground, 70% lean meat / 30% fat, raw",Beef Products,54.38,332,14.35,30.00,0.00,0.0,0.00,0.70,67,218
13500,"Beef, shoulder top blade steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,62.11,196,28.15,9.23,0.00,0.0,0.00,1.13,87,390
13519,"Beef, shoulder top blade steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.42,139,20.36,6.42,0.00,0.0,0.00,1.10,83,338
13595,"Beef, brisket, flat half, boneless separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.70,132,21.47,5.11,0.00,0.0,0.00,1.03,83,362
13598,"Beef, shoulder top blade steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,61.04,210,27.59,11.07,0.00,0.0,0.00,1.11,85,379
13647,"Beef, shoulder pot roast or steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,73.17,123,21.64,4.09,0.00,0.0,0.00,1.13,73,399
13795,"Beef, composite of trimmed retail cuts, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,62.02,234,18.68,17.15,0.00,0.0,0.00,0.91,58,306
13803,"Beef, brisket, whole, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,61.08,251,18.42,19.06,0.00,0.0,0.00,0.88,69,282
13805,"Beef, brisket, flat half, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,59.07,277,17.94,22.18,0.00,0.0,0.00,0.81,59,276
13807,"Beef, brisket, point half, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,59.96,265,17.65,20.98,0.00,0.0,0.00,0.82,72,264
13809,"Beef, chuck, arm pot roast, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,62.33,244,19.23,17.98,0.00,0.0,0.00,0.86,62,290
13815,"Beef, chuck, blade roast, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,61.23,248,17.16,19.41,0.00,0.0,0.00,0.82,68,271
13824,"Beef, rib, whole (ribs 6-12), separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,55.24,306,16.53,26.10,0.00,0.0,,0.78,55,272
13838,"Beef, rib, large end (ribs 6-9), separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,54.51,316,16.26,27.29,0.00,0.0,,0.76,55,260
13850,"Beef, rib, small end (ribs 10-12), separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,61.05,254,19.33,19.06,0.00,0.0,0.00,0.90,49,295
13863,"Beef, shoulder top blade steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,71.89,146,20.16,7.25,0.00,0.0,0.00,1.09,82,335
13868,"Beef, round, bottom round, steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,66.88,192,20.70,11.54,0.00,0.0,0.00,1.01,56,327
13877,"Beef, round, eye of round, roast, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,69.31,166,21.49,8.24,0.00,0.0,0.00,1.01,58,340
13883,"Beef, round, tip round, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,66.10,189,19.60,11.67,0.00,0.0,,0.95,58,329
13891,"Beef, round, top round, steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,69.04,166,22.06,7.93,0.00,0.0,0.00,1.10,60,349
13904,"Beef, brisket, flat half, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,69.89,165,20.32,9.29,0.00,0.0,0.00,0.98,80,344
13909,"Beef, short loin, top loin, steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,63.43,228,20.61,15.49,0.00,0.0,0.00,0.90,52,313
13917,"Beef, tenderloin, steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,61.52,247,19.61,18.16,0.00,0.0,0.00,0.92,50,302
13929,"Beef, top sirloin, steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,66.09,201,20.30,12.71,0.00,0.0,0.00,1.03,52,315
13948,"Beef, flank, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,64.17,192,27.66,8.23,0.00,0.0,0.00,1.09,56,339
13952,"Beef, rib eye, small end (ribs 10-12), separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,57.52,249,27.27,14.74,0.00,0.0,0.00,1.10,56,340
13954,"Beef, bottom sirloin, tri-tip roast, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,70.08,165,20.64,8.55,0.00,0.0,0.00,1.03,52,317
13959,"Beef, round, top round steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,64.68,167,29.96,4.28,0.00,0.0,0.00,1.24,75,433
13970,"Beef, flank, steak, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,70.73,155,21.22,7.17,0.00,0.0,0.00,1.00,54,328
13977,"Beef, plate, inside skirt steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,61.77,205,26.66,10.06,0.00,0.0,0.00,1.09,76,295
13979,"Beef, plate, outside skirt steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,59.17,233,24.18,14.37,0.00,0.0,0.00,0.95,94,393
13982,"Beef, chuck, short ribs, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.05,240,28.82,13.80,0.00,0.0,0.00,0.91,75,276
13985,"Beef, loin, bottom sirloin butt, tri-tip roast, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.67,182,26.75,8.34,0.00,0.0,0.00,1.08,55,340
13987,"Beef, loin, bottom sirloin butt, tri-tip steak, separable lean only, trimmed 0"" fat, all grades, cooked, broiled",Beef Products,51.67,250,30.68,13.16,0.00,0.0,0.00,1.49,73,449
14016,"Beverages, almond milk, sweetened, vanilla flavor, ready-to-drink",Beverages,91.80,38,0.42,1.04,6.67,0.4,6.25,0.22,63,50
14121,"Carbonated beverage, club soda",Beverages,99.90,0,0.00,0.00,0.00,0.0,0.00,0.10,21,2
14155,"Carbonated beverage, tonic water",Beverages,91.10,34,0.00,0.00,8.80,0.0,8.80,0.10,12,0
14192,"Cocoa mix, powder",Beverages,1.50,398,6.67,4.00,83.73,3.7,65.55,4.10,504,712
14194,"Cocoa mix, powder, prepared with water",Beverages,86.34,55,0.92,0.55,11.54,0.5,9.03,0.65,73,99
14203,"Coffee, instant, regular, powder, half the caffeine",Beverages,3.10,352,14.42,0.50,73.18,0.0,0.00,8.80,37,3535
14209,"Coffee, brewed from grounds, prepared with tap water",Beverages,99.39,1,0.12,0.02,0.00,0.0,0.00,0.35,2,49
14214,"Coffee, instant, regular, powder",Beverages,3.10,353,12.20,0.50,75.40,0.0,0.00,8.80,37,3535
14215,"Coffee, instant, regular, prepared with water",Beverages,99.09,2,0.10,0.00,0.34,0.0,0.00,0.17,4,30
14222,"Coffee, instant, with chicory, powder",Beverages,4.10,355,9.30,0.20,78.90,0.5,,7.50,277,3395
14223,"Coffee, instant, with chicory, prepared with water",Beverages,98.94,3,0.09,0.00,0.75,0.0,0.00,0.17,7,35
14236,"Coffee substitute, cereal grain beverage, powder",Beverages,7.99,360,6.01,2.52,78.42,23.3,4.63,5.06,83,2443
14237,"Coffee substitute, cereal grain beverage, prepared with water",Beverages,98.37,6,0.10,0.04,1.30,0.4,0.08,0.18,5,41
14355,"Tea, black, brewed, prepared with tap water",Beverages,99.70,1,0.00,0.00,0.30,0.0,0.00,0.00,3,37
14381,"Tea, herb, other than chamomile, brewed",Beverages,99.70,1,0.00,0.00,0.20,0.0,0.00,0.00,1,9
14411,"Water, tap, drinking",Beverages,99.90,0,0.00,0.00,0.00,0.0,0.00,0.10,4,0
14412,"Water, tap, well",Beverages,99.90,0,0.00,0.00,0.00,0.0,,0.10,5,0
14421,"Coffee substitute, cereal grain beverage, powder, prepared with whole milk",Beverages,87.00,65,3.30,3.30,5.60,0.1,,0.80,49,172
14429,"Water, tap, municipal",Beverages,99.90,0,0.00,0.00,0.00,0.0,0.00,0.10,3,1
14545,"Tea, herb, chamomile, brewed",Beverages,99.70,1,0.00,0.00,0.20,0.0,0.00,0.00,1,9
14555,"Water, bottled, generic",Beverages,99.98,0,0.00,0.00,0.00,0.0,0.00,0.07,2,0
15001,"Fish, anchovy, european, raw",Finfish and Shellfish Products,73.37,131,20.35,4.84,0.00,0.0,0.00,1.44,104,383
15002,"Fish, anchovy, european, canned in oil, drained solids",Finfish and Shellfish Products,50.30,210,28.89,9.71,0.00,0.0,0.00,11.10,3668,544
15003,"Fish, bass, fresh water, mixed species, raw",Finfish and Shellfish Products,75.66,114,18.86,3.69,0.00,0.0,,1.52,70,356
15004,"Fish, bass, striped, raw",Finfish and Shellfish Products,79.22,97,17.73,2.33,0.00,0.0,,1.04,69,256
15005,"Fish, bluefish, raw",Finfish and Shellfish Products,70.86,124,20.04,4.24,0.00,0.0,,1.04,60,372
15006,"Fish, burbot, raw",Finfish and Shellfish Products,79.26,90,19.31,0.81,0.00,0.0,,1.16,97,404
15007,"Fish, butterfish, raw",Finfish and Shellfish Products,74.13,146,17.28,8.02,0.00,0.0,,1.20,89,375
15008,"Fish, carp, raw",Finfish and Shellfish Products,76.31,127,17.83,5.60,0.00,0.0,0.00,1.46,49,333
15009,"Fish, carp, cooked, dry heat",Finfish and Shellfish Products,69.63,162,22.86,7.17,0.00,0.0,,1.87,63,427
15010,"Fish, catfish, channel, wild, raw",Finfish and Shellfish Products,80.36,95,16.38,2.82,0.00,0.0,,0.96,43,358
15011,"Fish, catfish, channel, cooked, breaded and fried",Finfish and Shellfish Products,58.81,229,18.09,13.33,8.04,0.7,,1.26,280,340
15012,"Fish, caviar, black and red, granular",Finfish and Shellfish Products,47.50,264,24.60,17.90,4.00,0.0,0.00,6.50,1500,181
15013,"Fish, cisco, raw",Finfish and Shellfish Products,78.93,98,18.99,1.91,0.00,0.0,,1.20,55,354
15014,"Fish, cisco, smoked",Finfish and Shellfish Products,69.80,177,16.36,11.90,0.00,0.0,0.00,2.00,481,293
15015,"Fish, cod, Atlantic, raw",Finfish and Shellfish Products,81.22,82,17.81,0.67,0.00,0.0,0.00,1.16,54,413
15016,"Fish, cod, Atlantic, cooked, dry heat",Finfish and Shellfish Products,75.92,105,22.83,0.86,0.00,0.0,0.00,1.49,78,244
15017,"Fish, cod, Atlantic, canned, solids and liquid",Finfish and Shellfish Products,75.61,105,22.76,0.86,0.00,0.0,0.00,1.49,218,528
15018,"Fish, cod, Atlantic, dried and salted",Finfish and Shellfish Products,16.14,290,62.82,2.37,0.00,0.0,0.00,18.67,7027,1458
15019,"Fish, cod, Pacific, raw",Finfish and Shellfish Products,83.95,69,15.27,0.41,0.00,0.0,0.00,1.46,303,235
15020,"Fish, croaker, Atlantic, raw",Finfish and Shellfish Products,78.03,104,17.78,3.17,0.00,0.0,0.00,1.11,56,345
15021,"Fish, croaker, Atlantic, cooked, breaded and fried",Finfish and Shellfish Products,59.76,221,18.20,12.67,7.54,0.4,,1.37,348,340
15022,"Fish, cusk, raw",Finfish and Shellfish Products,76.35,87,18.99,0.69,0.00,0.0,,1.25,31,392
15023,"Fish, dolphinfish, raw",Finfish and Shellfish Products,77.55,85,18.50,0.70,0.00,0.0,,2.10,88,416
15024,"Fish, drum, freshwater, raw",Finfish and Shellfish Products,77.33,119,17.54,4.93,0.00,0.0,,1.08,75,275
15025,"Fish, eel, mixed species, raw",Finfish and Shellfish Products,68.26,184,18.44,11.66,0.00,0.0,0.00,1.41,51,272
15026,"Fish, eel, mixed species, cooked, dry heat",Finfish and Shellfish Products,59.31,236,23.65,14.95,0.00,0.0,,1.80,65,349
15027,"Fish, fish sticks, frozen, prepared",Finfish and Shellfish Products,49.50,277,11.01,16.23,21.66,1.5,1.65,1.61,402,185
15028,"Fish, flatfish (flounder and sole species), raw",Finfish and Shellfish Products,84.63,70,12.41,1.93,0.00,0.0,0.00,1.22,296,160
15029,"Fish, flatfish (flounder and sole species), cooked, dry heat",Finfish and Shellfish Products,81.11,86,15.24,2.37,0.00,0.0,0.00,1.49,363,197
15030,"Fish, gefiltefish, commercial, sweet recipe",Finfish and Shellfish Products,80.35,84,9.07,1.73,7.41,0.0,,1.44,524,91
15031,"Fish, grouper, mixed species, raw",Finfish and Shellfish Products,79.22,92,19.38,1.02,0.00,0.0,,1.17,53,483
15032,"Fish, grouper, mixed species, cooked, dry heat",Finfish and Shellfish Products,73.36,118,24.84,1.30,0.00,0.0,,1.41,53,475
15033,"Fish, haddock, raw",Finfish and Shellfish Products,83.38,74,16.32,0.45,0.00,0.0,0.00,1.28,213,286
15034,"Fish, haddock, cooked, dry heat",Finfish and Shellfish Products,79.65,90,19.99,0.55,0.00,0.0,0.00,1.56,261,351
15035,"Fish, haddock, smoked",Finfish and Shellfish Products,71.48,116,25.23,0.96,0.00,0.0,0.00,1.62,763,415
15036,"Fish, halibut, Atlantic and Pacific, raw",Finfish and Shellfish Products,80.34,91,18.56,1.33,0.00,0.0,0.00,1.29,68,435
15037,"Fish, halibut, Atlantic and Pacific, cooked, dry heat",Finfish and Shellfish Products,76.12,111,22.54,1.61,0.00,0.0,0.00,1.57,82,528
15038,"Fish, halibut, Greenland, raw",Finfish and Shellfish Products,70.27,186,14.37,13.84,0.00,0.0,0.00,1.00,80,268
15039,"Fish, herring, Atlantic, raw",Finfish and Shellfish Products,72.05,158,17.96,9.04,0.00,0.0,0.00,1.46,90,327
15040,"Fish, herring, Atlantic, cooked, dry heat",Finfish and Shellfish Products,64.16,203,23.03,11.59,0.00,0.0,0.00,1.87,115,419
15041,"Fish, herring, Atlantic, pickled",Finfish and Shellfish Products,55.22,262,14.19,18.00,9.64,0.0,7.71,2.95,870,69
15042,"Fish, herring, Atlantic, kippered",Finfish and Shellfish Products,59.70,217,24.58,12.37,0.00,0.0,0.00,1.94,918,447
15043,"Fish, herring, Pacific, raw",Finfish and Shellfish Products,71.52,195,16.39,13.88,0.00,0.0,,2.37,74,423
15044,"Fish, ling, raw",Finfish and Shellfish Products,79.63,87,18.99,0.64,0.00,0.0,,1.40,135,379
15045,"Fish, lingcod, raw",Finfish and Shellfish Products,81.03,85,17.66,1.06,0.00,0.0,,1.21,59,437
15046,"Fish, mackerel, Atlantic, raw",Finfish and Shellfish Products,63.55,205,18.60,13.89,0.00,0.0,0.00,1.35,90,314
15047,"Fish, mackerel, Atlantic, cooked, dry heat",Finfish and Shellfish Products,53.27,262,23.85,17.81,0.00,0.0,,1.53,83,401
15048,"Fish, mackerel, jack, canned, drained solids",Finfish and Shellfish Products,69.17,156,23.19,6.30,0.00,0.0,0.00,1.73,379,194
15049,"Fish, mackerel, king, raw",Finfish and Shellfish Products,75.85,105,20.28,2.00,0.00,0.0,,1.28,158,435
15050,"Fish, mackerel, Pacific and jack, mixed species, raw",Finfish and Shellfish Products,70.15,158,20.07,7.89,0.00,0.0,0.00,1.62,86,406
15051,"Fish, mackerel, spanish, raw",Finfish and Shellfish Products,71.67,139,19.29,6.30,0.00,0.0,0.00,1.27,59,446
15052,"Fish, mackerel, spanish, cooked, dry heat",Finfish and Shellfish Products,68.46,158,23.59,6.32,0.00,0.0,,1.53,66,554
15053,"Fish, milkfish, raw",Finfish and Shellfish Products,70.85,148,20.53,6.73,0.00,0.0,,1.14,72,292
15054,"Fish, monkfish, raw",Finfish and Shellfish Products,83.24,76,14.48,1.52,0.00,0.0,,1.21,18,400
15055,"Fish, mullet, striped, raw",Finfish and Shellfish Products,77.01,117,19.35,3.79,0.00,0.0,0.00,1.20,65,357
15056,"Fish, mullet, striped, cooked, dry heat",Finfish and Shellfish Products,70.52,150,24.81,4.86,0.00,0.0,,1.34,71,458
15057,"Fish, ocean perch, Atlantic, raw",Finfish and Shellfish Products,83.07,79,15.31,1.54,0.00,0.0,0.00,1.20,287,187
15058,"Fish, ocean perch, Atlantic, cooked, dry heat",Finfish and Shellfish Products,74.24,96,18.51,1.87,0.00,0.0,0.00,1.60,347,226
15059,"Fish, pout, ocean, raw",Finfish and Shellfish Products,81.36,79,16.64,0.91,0.00,0.0,,1.13,61,400
15060,"Fish, perch, mixed species, raw",Finfish and Shellfish Products,79.13,91,19.39,0.92,0.00,0.0,0.00,1.24,62,269
15061,"Fish, perch, mixed species, cooked, dry heat",Finfish and Shellfish Products,73.25,117,24.86,1.18,0.00,0.0,,1.59,79,344
15062,"Fish, pike, northern, raw",Finfish and Shellfish Products,78.92,88,19.26,0.69,0.00,0.0,0.00,1.20,39,259
15063,"Fish, pike, northern, cooked, dry heat",Finfish and Shellfish Products,72.97,113,24.69,0.88,0.00,0.0,,1.54,49,331
15064,"Fish, pike, walleye, raw",Finfish and Shellfish Products,79.31,93,19.14,1.22,0.00,0.0,,1.20,51,389
15065,"Fish, pollock, Atlantic, raw",Finfish and Shellfish Products,78.18,92,19.44,0.98,0.00,0.0,0.00,1.41,86,356
15066,"Fish, pollock, Alaska, raw",Finfish and Shellfish Products,86.75,56,12.19,0.41,0.00,0.0,0.00,1.36,333,160
15067,"Fish, pollock, Alaska, cooked, dry heat",Finfish and Shellfish Products,73.65,111,23.48,1.18,0.00,0.0,0.00,1.70,419,430
15068,"Fish, pompano, florida, raw",Finfish and Shellfish Products,71.12,164,18.48,9.47,0.00,0.0,0.00,1.10,65,381
15069,"Fish, pompano, florida, cooked, dry heat",Finfish and Shellfish Products,62.97,211,23.69,12.14,0.00,0.0,,1.38,76,636
15070,"Fish, rockfish, Pacific, mixed species, raw",Finfish and Shellfish Products,79.08,90,18.36,1.34,0.00,0.0,0.00,1.31,74,386
15071,"Fish, rockfish, Pacific, mixed species, cooked, dry heat",Finfish and Shellfish Products,74.67,109,22.23,1.62,0.00,0.0,0.00,1.59,89,467
15072,"Fish, roe, mixed species, raw",Finfish and Shellfish Products,67.73,143,22.32,6.42,1.50,0.0,0.00,1.37,91,221
15073,"Fish, roughy, orange, raw",Finfish and Shellfish Products,75.67,76,16.41,0.70,0.00,0.0,0.00,1.08,72,167
15074,"Fish, sablefish, raw",Finfish and Shellfish Products,71.02,195,13.41,15.30,0.00,0.0,,1.05,56,358
15075,"Fish, sablefish, smoked",Finfish and Shellfish Products,60.14,257,17.65,20.14,0.00,0.0,,2.07,737,471
15076,"Fish, salmon, Atlantic, wild, raw",Finfish and Shellfish Products,68.50,142,19.84,6.34,0.00,0.0,,2.54,44,490
15077,"Fish, salmon, chinook, smoked",Finfish and Shellfish Products,72.00,117,18.28,4.32,0.00,0.0,0.00,2.62,672,175
15078,"Fish, salmon, chinook, raw",Finfish and Shellfish Products,71.64,179,19.93,10.43,0.00,0.0,0.00,1.33,47,394
15079,"Fish, salmon, chum, raw",Finfish and Shellfish Products,75.38,120,20.14,3.77,0.00,0.0,,1.18,50,429
15080,"Fish, salmon, chum, canned, drained solids with bone",Finfish and Shellfish Products,70.77,141,21.43,5.50,0.00,0.0,0.00,2.47,391,300
15081,"Fish, salmon, coho, wild, raw",Finfish and Shellfish Products,72.66,146,21.62,5.93,0.00,0.0,0.00,1.21,46,423
15082,"Fish, salmon, coho, wild, cooked, moist heat",Finfish and Shellfish Products,65.39,184,27.36,7.50,0.00,0.0,,1.53,53,455
15083,"Fish, salmon, pink, raw",Finfish and Shellfish Products,75.52,127,20.50,4.40,0.00,0.0,0.00,1.52,75,366
15084,"Fish, salmon, pink, canned, total can contents",Finfish and Shellfish Products,74.04,129,19.68,4.97,0.00,0.0,0.00,2.40,403,344
15085,"Fish, salmon, sockeye, raw",Finfish and Shellfish Products,73.15,142,21.31,5.61,0.00,0.0,0.00,1.20,112,343
15086,"Fish, salmon, sockeye, cooked, dry heat",Finfish and Shellfish Products,68.00,169,25.40,6.69,0.00,0.0,0.00,1.43,134,408
15087,"Fish, salmon, sockeye, canned, drained solids",Finfish and Shellfish Products,68.07,167,23.59,7.39,0.00,0.0,0.00,2.47,408,314
15088,"Fish, sardine, Atlantic, canned in oil, drained solids with bone",Finfish and Shellfish Products,59.61,208,24.62,11.45,0.00,0.0,0.00,3.38,307,397
15089,"Fish, sardine, Pacific, canned in tomato sauce, drained solids with bone",Finfish and Shellfish Products,66.86,185,20.86,10.45,0.54,0.1,0.43,1.88,414,341
15090,"Fish, scup, raw",Finfish and Shellfish Products,75.37,105,18.88,2.73,0.00,0.0,0.00,1.21,42,287
15091,"Fish, sea bass, mixed species, raw",Finfish and Shellfish Products,78.27,97,18.43,2.00,0.00,0.0,0.00,1.09,68,256
15092,"Fish, sea bass, mixed species, cooked, dry heat",Finfish and Shellfish Products,72.14,124,23.63,2.56,0.00,0.0,,1.40,87,328
15093,"Fish, seatrout, mixed species, raw",Finfish and Shellfish Products,78.09,104,16.74,3.61,0.00,0.0,,1.26,58,341
15094,"Fish, shad, american, raw",Finfish and Shellfish Products,68.19,197,16.93,13.77,0.00,0.0,0.00,1.32,51,384
15095,"Fish, shark, mixed species, raw",Finfish and Shellfish Products,73.58,130,20.98,4.51,0.00,0.0,0.00,1.39,79,160
15096,"Fish, shark, mixed species, cooked, batter-dipped and fried",Finfish and Shellfish Products,60.09,228,18.62,13.82,6.39,0.0,,1.25,122,155
15097,"Fish, sheepshead, raw",Finfish and Shellfish Products,77.97,108,20.21,2.41,0.00,0.0,,1.09,71,404
15098,"Fish, sheepshead, cooked, dry heat",Finfish and Shellfish Products,69.04,126,26.02,1.63,0.00,0.0,,1.44,73,512
15099,"Fish, smelt, rainbow, raw",Finfish and Shellfish Products,78.77,97,17.63,2.42,0.00,0.0,0.00,1.40,60,290
15100,"Fish, smelt, rainbow, cooked, dry heat",Finfish and Shellfish Products,72.79,124,22.60,3.10,0.00,0.0,,1.79,77,372
15101,"Fish, snapper, mixed species, raw",Finfish and Shellfish Products,76.87,100,20.51,1.34,0.00,0.0,0.00,1.31,64,417
15102,"Fish, snapper, mixed species, cooked, dry heat",Finfish and Shellfish Products,70.35,128,26.30,1.72,0.00,0.0,,1.41,57,522
15103,"Fish, spot, raw",Finfish and Shellfish Products,75.95,123,18.51,4.90,0.00,0.0,,1.06,29,496
15104,"Fish, sturgeon, mixed species, raw",Finfish and Shellfish Products,76.55,105,16.14,4.04,0.00,0.0,0.00,1.10,54,284
15105,"Fish, sturgeon, mixed species, cooked, dry heat",Finfish and Shellfish Products,69.94,135,20.70,5.18,0.00,0.0,0.00,1.41,69,364
15106,"Fish, sturgeon, mixed species, smoked",Finfish and Shellfish Products,62.50,173,31.20,4.40,0.00,0.0,0.00,1.90,739,379
15107,"Fish, sucker, white, raw",Finfish and Shellfish Products,79.71,92,16.76,2.32,0.00,0.0,,1.46,40,380
15108,"Fish, sunfish, pumpkin seed, raw",Finfish and Shellfish Products,79.50,89,19.40,0.70,0.00,0.0,,1.10,80,350
15109,"Fish, surimi",Finfish and Shellfish Products,76.34,99,15.18,0.90,6.85,0.0,0.00,0.72,143,112
15110,"Fish, swordfish, raw",Finfish and Shellfish Products,73.38,144,19.66,6.65,0.00,0.0,0.00,1.44,81,418
15111,"Fish, swordfish, cooked, dry heat",Finfish and Shellfish Products,68.26,172,23.45,7.93,0.00,0.0,0.00,1.71,97,499
15112,"Fish, tilefish, raw",Finfish and Shellfish Products,78.90,96,17.50,2.31,0.00,0.0,,1.14,53,433
15113,"Fish, tilefish, cooked, dry heat",Finfish and Shellfish Products,70.24,147,24.49,4.69,0.00,0.0,,1.36,59,512
15114,"Fish, trout, mixed species, raw",Finfish and Shellfish Products,71.42,148,20.77,6.61,0.00,0.0,0.00,1.17,52,361
15115,"Fish, trout, rainbow, wild, raw",Finfish and Shellfish Products,71.87,119,20.48,3.46,0.00,0.0,,1.31,31,481
15116,"Fish, trout, rainbow, wild, cooked, dry heat",Finfish and Shellfish Products,70.50,150,22.92,5.82,0.00,0.0,,1.60,56,448
15117,"Fish, tuna, fresh, bluefin, raw",Finfish and Shellfish Products,68.09,144,23.33,4.90,0.00,0.0,0.00,1.18,39,252
15118,"Fish, tuna, fresh, bluefin, cooked, dry heat",Finfish and Shellfish Products,59.09,184,29.91,6.28,0.00,0.0,,1.51,50,323
15119,"Fish, tuna, light, canned in oil, drained solids",Finfish and Shellfish Products,59.83,198,29.13,8.21,0.00,0.0,0.00,2.76,416,207
15121,"Fish, tuna, light, canned in water, drained solids",Finfish and Shellfish Products,78.14,86,19.44,0.96,0.00,0.0,0.00,0.95,247,179
15123,"Fish, tuna, fresh, skipjack, raw",Finfish and Shellfish Products,70.58,103,22.00,1.01,0.00,0.0,,1.30,37,407
15124,"Fish, tuna, white, canned in oil, drained solids",Finfish and Shellfish Products,64.02,186,26.53,8.08,0.00,0.0,0.00,2.18,396,333
15126,"Fish, tuna, white, canned in water, drained solids",Finfish and Shellfish Products,73.19,128,23.62,2.97,0.00,0.0,0.00,1.46,377,237
15127,"Fish, tuna, fresh, yellowfin, raw",Finfish and Shellfish Products,74.03,109,24.40,0.49,0.00,0.0,0.00,1.64,45,441
15128,"Fish, tuna salad",Finfish and Shellfish Products,63.16,187,16.04,9.26,9.41,0.0,,2.14,402,178
15129,"Fish, turbot, european, raw",Finfish and Shellfish Products,76.95,95,16.05,2.95,0.00,0.0,,2.10,150,238
15130,"Fish, whitefish, mixed species, raw",Finfish and Shellfish Products,72.77,134,19.09,5.86,0.00,0.0,0.00,1.12,51,317
15131,"Fish, whitefish, mixed species, smoked",Finfish and Shellfish Products,70.83,108,23.40,0.93,0.00,0.0,0.00,5.06,1019,423
15132,"Fish, whiting, mixed species, raw",Finfish and Shellfish Products,80.27,90,18.31,1.31,0.00,0.0,0.00,1.30,72,249
15133,"Fish, whiting, mixed species, cooked, dry heat",Finfish and Shellfish Products,74.71,116,23.48,1.69,0.00,0.0,0.00,1.46,132,434
15134,"Fish, wolffish, Atlantic, raw",Finfish and Shellfish Products,79.90,96,17.50,2.39,0.00,0.0,,1.16,85,300
15135,"Fish, yellowtail, mixed species, raw",Finfish and Shellfish Products,74.52,146,23.14,5.24,0.00,0.0,,1.09,39,420
15136,"Crustaceans, crab, alaska king, raw",Finfish and Shellfish Products,79.57,84,18.29,0.60,0.00,0.0,,1.80,836,204
15137,"Crustaceans, crab, alaska king, cooked, moist heat",Finfish and Shellfish Products,77.55,97,19.35,1.54,0.00,0.0,,1.85,1072,262
15139,"Crustaceans, crab, blue, raw",Finfish and Shellfish Products,79.02,87,18.06,1.08,0.04,0.0,,1.81,293,329
15140,"Crustaceans, crab, blue, cooked, moist heat",Finfish and Shellfish Products,79.69,83,17.88,0.74,0.00,0.0,0.00,1.96,395,259
15141,"Crustaceans, crab, blue, canned",Finfish and Shellfish Products,79.69,83,17.88,0.74,0.00,0.0,0.00,1.96,563,259
15142,"Crustaceans, crab, blue, crab cakes, home recipe",Finfish and Shellfish Products,71.00,155,20.21,7.52,0.48,0.0,,2.10,330,324
15143,"Crustaceans, crab, dungeness, raw",Finfish and Shellfish Products,79.18,86,17.41,0.97,0.74,0.0,,1.70,295,354
15144,"Crustaceans, crab, queen, raw",Finfish and Shellfish Products,80.58,90,18.50,1.18,0.00,0.0,,2.00,539,173
15145,"Crustaceans, crayfish, mixed species, wild, raw",Finfish and Shellfish Products,82.24,77,15.97,0.95,0.00,0.0,0.00,1.34,58,302
15146,"Crustaceans, crayfish, mixed species, wild, cooked, moist heat",Finfish and Shellfish Products,79.37,82,16.77,1.20,0.00,0.0,0.00,1.20,94,296
15147,"Crustaceans, lobster, northern, raw",Finfish and Shellfish Products,80.95,77,16.52,0.75,0.00,0.0,0.00,1.88,423,200
15148,"Crustaceans, lobster, northern, cooked, moist heat",Finfish and Shellfish Products,78.11,89,19.00,0.86,0.00,0.0,0.00,2.14,486,230
15149,"Crustaceans, shrimp, mixed species, raw",Finfish and Shellfish Products,83.01,71,13.61,1.01,0.91,0.0,0.00,1.86,566,113
15150,"Crustaceans, shrimp, mixed species, cooked, breaded and fried",Finfish and Shellfish Products,52.86,242,21.39,12.28,11.47,0.4,0.80,1.99,344,225
15151,"Crustaceans, shrimp, mixed species, cooked, moist heat",Finfish and Shellfish Products,71.56,119,22.78,1.70,1.52,0.0,0.00,3.11,947,170
15152,"Crustaceans, shrimp, mixed species, canned",Finfish and Shellfish Products,75.85,100,20.42,1.36,0.00,0.0,0.00,2.54,870,80
15154,"Crustaceans, spiny lobster, mixed species, raw",Finfish and Shellfish Products,74.07,112,20.60,1.51,2.43,0.0,,1.39,177,180
15155,"Mollusks, abalone, mixed species, raw",Finfish and Shellfish Products,74.56,105,17.10,0.76,6.01,0.0,0.00,1.57,301,250
15156,"Mollusks, abalone, mixed species, cooked, fried",Finfish and Shellfish Products,60.10,189,19.63,6.78,11.05,0.0,,1.77,591,284
15157,"Mollusks, clam, mixed species, raw",Finfish and Shellfish Products,78.98,86,14.67,0.96,3.57,0.0,0.00,1.82,601,46
15158,"Mollusks, clam, mixed species, cooked, breaded and fried",Finfish and Shellfish Products,61.55,202,14.24,11.15,10.33,,,2.16,364,326
15159,"Mollusks, clam, mixed species, cooked, moist heat",Finfish and Shellfish Products,63.64,148,25.55,1.95,5.13,0.0,,3.74,1202,628
15160,"Mollusks, clam, mixed species, canned, drained solids",Finfish and Shellfish Products,65.26,142,24.25,1.59,5.90,0.0,0.00,3.00,112,628
15162,"Mollusks, clam, mixed species, canned, liquid",Finfish and Shellfish Products,97.70,2,0.40,0.02,0.10,0.0,0.00,1.80,215,149
15163,"Mollusks, cuttlefish, mixed species, raw",Finfish and Shellfish Products,80.56,79,16.24,0.70,0.82,0.0,,1.68,372,354
15164,"Mollusks, mussel, blue, raw",Finfish and Shellfish Products,80.58,86,11.90,2.24,3.69,0.0,0.00,1.59,286,320
15165,"Mollusks, mussel, blue, cooked, moist heat",Finfish and Shellfish Products,61.15,172,23.80,4.48,7.39,0.0,,3.18,369,268
15166,"Mollusks, octopus, common, raw",Finfish and Shellfish Products,80.25,82,14.91,1.04,2.20,0.0,0.00,1.60,230,350
15167,"Mollusks, oyster, eastern, wild, raw",Finfish and Shellfish Products,89.04,51,5.71,1.71,2.72,0.0,0.62,0.82,85,156
15168,"Mollusks, oyster, eastern, cooked, breaded and fried",Finfish and Shellfish Products,64.72,199,8.77,12.58,11.62,,,1.72,417,244
15169,"Mollusks, oyster, eastern, wild, cooked, moist heat",Finfish and Shellfish Products,78.19,102,11.42,3.42,5.45,0.0,1.23,1.53,166,139
15170,"Mollusks, oyster, eastern, canned",Finfish and Shellfish Products,85.14,68,7.06,2.47,3.91,0.0,0.00,1.42,112,229
15171,"Mollusks, oyster, Pacific, raw",Finfish and Shellfish Products,82.06,81,9.45,2.30,4.95,0.0,,1.23,106,168
15172,"Mollusks, scallop, mixed species, raw",Finfish and Shellfish Products,82.53,69,12.06,0.49,3.18,0.0,0.00,1.74,392,205
15173,"Mollusks, scallop, mixed species, cooked, breaded and fried",Finfish and Shellfish Products,58.44,216,18.07,10.94,10.13,,,1.83,464,333
15175,"Mollusks, squid, mixed species, raw",Finfish and Shellfish Products,78.55,92,15.58,1.38,3.08,0.0,0.00,1.41,44,246
15176,"Mollusks, squid, mixed species, cooked, fried",Finfish and Shellfish Products,64.54,175,17.94,7.48,7.79,0.0,,1.59,306,279
15177,"Mollusks, whelk, unspecified, raw",Finfish and Shellfish Products,66.00,137,23.84,0.40,7.76,0.0,0.00,2.00,206,347
15178,"Mollusks, whelk, unspecified, cooked, moist heat",Finfish and Shellfish Products,32.00,275,47.68,0.80,15.52,0.0,,4.00,412,694
15179,"Fish, salmon, chinook, smoked, (lox), regular",Finfish and Shellfish Products,72.00,117,18.28,4.32,0.00,0.0,,2.62,2000,175
15180,"Fish, salmon, chum, canned, without salt, drained solids with bone",Finfish and Shellfish Products,70.77,141,21.43,5.50,0.00,0.0,,2.47,75,300
15181,"Fish, salmon, pink, canned, without salt, solids with bone and liquid",Finfish and Shellfish Products,70.03,139,19.78,6.05,0.00,0.0,,1.38,75,326
15182,"Fish, salmon, sockeye, canned, without salt, drained solids with bone",Finfish and Shellfish Products,68.72,153,20.47,7.31,0.00,0.0,,2.70,75,377
15183,"Fish, tuna, light, canned in oil, without salt, drained solids",Finfish and Shellfish Products,59.83,198,29.13,8.21,0.00,0.0,,2.76,50,207
15184,"Fish, tuna, light, canned in water, without salt, drained solids",Finfish and Shellfish Products,75.21,116,25.51,0.82,0.00,0.0,0.00,0.78,50,237
15185,"Fish, tuna, white, canned in oil, without salt, drained solids",Finfish and Shellfish Products,64.02,186,26.53,8.08,0.00,0.0,,2.18,50,333
15186,"Fish, tuna, white, canned in water, without salt, drained solids",Finfish and Shellfish Products,74.02,128,23.62,2.97,0.00,0.0,,0.63,50,237
15187,"Fish, bass, freshwater, mixed species, cooked, dry heat",Finfish and Shellfish Products,68.79,146,24.18,4.73,0.00,0.0,,1.95,90,456
15188,"Fish, bass, striped, cooked, dry heat",Finfish and Shellfish Products,73.36,124,22.73,2.99,0.00,0.0,,1.33,88,328
15189,"Fish, bluefish, cooked, dry heat",Finfish and Shellfish Products,62.64,159,25.69,5.44,0.00,0.0,,1.33,77,477
15190,"Fish, burbot, cooked, dry heat",Finfish and Shellfish Products,73.41,115,24.76,1.04,0.00,0.0,,1.49,124,518
15191,"Fish, butterfish, cooked, dry heat",Finfish and Shellfish Products,66.83,187,22.15,10.28,0.00,0.0,,1.54,114,481
15192,"Fish, cod, Pacific, cooked, dry heat",Finfish and Shellfish Products,80.31,85,18.73,0.50,0.00,0.0,0.00,1.80,372,289
15193,"Fish, cusk, cooked, dry heat",Finfish and Shellfish Products,69.68,112,24.35,0.88,0.00,0.0,,1.60,40,503
15194,"Fish, dolphinfish, cooked, dry heat",Finfish and Shellfish Products,71.22,109,23.72,0.90,0.00,0.0,,2.69,113,533
15195,"Fish, drum, freshwater, cooked, dry heat",Finfish and Shellfish Products,70.94,153,22.49,6.32,0.00,0.0,,1.38,96,353
15196,"Fish, halibut, greenland, cooked, dry heat",Finfish and Shellfish Products,61.88,239,18.42,17.74,0.00,0.0,,1.28,103,344
15197,"Fish, herring, Pacific, cooked, dry heat",Finfish and Shellfish Products,63.49,250,21.01,17.79,0.00,0.0,,3.04,95,542
15198,"Fish, ling, cooked, dry heat",Finfish and Shellfish Products,73.88,111,24.35,0.82,0.00,0.0,,1.79,173,486
15199,"Fish, lingcod, cooked, dry heat",Finfish and Shellfish Products,75.68,109,22.64,1.36,0.00,0.0,,1.55,76,560
15200,"Fish, mackerel, king, cooked, dry heat",Finfish and Shellfish Products,69.04,134,26.00,2.56,0.00,0.0,,1.64,203,558
15201,"Fish, mackerel, Pacific and jack, mixed species, cooked, dry heat",Finfish and Shellfish Products,61.73,201,25.73,10.12,0.00,0.0,0.00,2.08,110,521
15202,"Fish, milkfish, cooked, dry heat",Finfish and Shellfish Products,62.63,190,26.32,8.63,0.00,0.0,,1.46,92,374
15203,"Fish, monkfish, cooked, dry heat",Finfish and Shellfish Products,78.51,97,18.56,1.95,0.00,0.0,,1.55,23,513
15204,"Fish, pike, walleye, cooked, dry heat",Finfish and Shellfish Products,73.47,119,24.54,1.56,0.00,0.0,,1.54,65,499
15205,"Fish, pollock, Atlantic, cooked, dry heat",Finfish and Shellfish Products,72.03,118,24.92,1.26,0.00,0.0,,1.81,110,456
15206,"Fish, pout, ocean, cooked, dry heat",Finfish and Shellfish Products,76.10,102,21.33,1.17,0.00,0.0,,1.45,78,513
15207,"Fish, roe, mixed species, cooked, dry heat",Finfish and Shellfish Products,58.63,204,28.62,8.23,1.92,0.0,,1.76,117,283
15208,"Fish, sablefish, cooked, dry heat",Finfish and Shellfish Products,62.85,250,17.19,19.62,0.00,0.0,,1.35,72,459
15209,"Fish, salmon, Atlantic, wild, cooked, dry heat",Finfish and Shellfish Products,59.62,182,25.44,8.13,0.00,0.0,,3.26,56,628
15210,"Fish, salmon, chinook, cooked, dry heat",Finfish and Shellfish Products,65.60,231,25.72,13.38,0.00,0.0,,1.76,60,505
15211,"Fish, salmon, chum, cooked, dry heat",Finfish and Shellfish Products,68.44,154,25.82,4.83,0.00,0.0,,1.51,64,550
15212,"Fish, salmon, pink, cooked, dry heat",Finfish and Shellfish Products,70.65,153,24.58,5.28,0.00,0.0,0.00,1.82,90,439
15213,"Fish, scup, cooked, dry heat",Finfish and Shellfish Products,68.42,135,24.21,3.50,0.00,0.0,,1.55,54,368
15214,"Fish, seatrout, mixed species, cooked, dry heat",Finfish and Shellfish Products,71.91,133,21.46,4.63,0.00,0.0,,1.62,74,437
15215,"Fish, shad, american, cooked, dry heat",Finfish and Shellfish Products,59.22,252,21.71,17.65,0.00,0.0,,1.69,65,492
15216,"Fish, spot, cooked, dry heat",Finfish and Shellfish Products,69.17,158,23.73,6.28,0.00,0.0,,1.36,37,636
15217,"Fish, sucker, white, cooked, dry heat",Finfish and Shellfish Products,73.99,119,21.49,2.97,0.00,0.0,,1.87,51,487
15218,"Fish, sunfish, pumpkin seed, cooked, dry heat",Finfish and Shellfish Products,73.72,114,24.87,0.90,0.00,0.0,,1.41,103,449
15219,"Fish, trout, mixed species, cooked, dry heat",Finfish and Shellfish Products,63.36,190,26.63,8.47,0.00,0.0,,1.50,67,463
15220,"Fish, tuna, skipjack, fresh, cooked, dry heat",Finfish and Shellfish Products,62.28,132,28.21,1.29,0.00,0.0,,1.67,47,522
15221,"Fish, tuna, yellowfin, fresh, cooked, dry heat",Finfish and Shellfish Products,68.98,130,29.15,0.59,0.00,0.0,0.00,1.96,54,527
15222,"Fish, turbot, european, cooked, dry heat",Finfish and Shellfish Products,70.45,122,20.58,3.78,0.00,0.0,,2.69,192,305
15223,"Fish, whitefish, mixed species, cooked, dry heat",Finfish and Shellfish Products,65.09,172,24.47,7.51,0.00,0.0,,1.44,65,406
15224,"Fish, wolffish, Atlantic, cooked, dry heat",Finfish and Shellfish Products,74.23,123,22.44,3.06,0.00,0.0,,1.49,109,385
15225,"Fish, yellowtail, mixed species, cooked, dry heat",Finfish and Shellfish Products,67.33,187,29.67,6.72,0.00,0.0,,1.40,50,538
15226,"Crustaceans, crab, dungeness, cooked, moist heat",Finfish and Shellfish Products,73.31,110,22.32,1.24,0.95,0.0,,2.18,378,408
15227,"Crustaceans, crab, queen, cooked, moist heat",Finfish and Shellfish Products,75.10,115,23.72,1.51,0.00,0.0,,2.56,691,200
15228,"Crustaceans, spiny lobster, mixed species, cooked, moist heat",Finfish and Shellfish Products,66.76,143,26.41,1.94,3.12,0.0,,1.78,227,208
15229,"Mollusks, cuttlefish, mixed species, cooked, moist heat",Finfish and Shellfish Products,61.12,158,32.48,1.40,1.64,0.0,,3.36,744,637
15230,"Mollusks, octopus, common, cooked, moist heat",Finfish and Shellfish Products,60.50,164,29.82,2.08,4.40,0.0,0.00,3.20,460,630
15231,"Mollusks, oyster, Pacific, cooked, moist heat",Finfish and Shellfish Products,64.12,163,18.90,4.60,9.90,0.0,0.00,2.46,212,302
15232,"Fish, roughy, orange, cooked, dry heat",Finfish and Shellfish Products,66.97,105,22.64,0.90,0.00,0.0,0.00,0.99,69,181
15233,"Fish, catfish, channel, wild, cooked, dry heat",Finfish and Shellfish Products,77.67,105,18.47,2.85,0.00,0.0,,1.15,50,419
15234,"Fish, catfish, channel, farmed, raw",Finfish and Shellfish Products,79.06,119,15.23,5.94,0.00,0.0,0.00,1.05,98,302
15235,"Fish, catfish, channel, farmed, cooked, dry heat",Finfish and Shellfish Products,74.65,144,18.44,7.19,0.00,0.0,0.00,1.28,119,366
15236,"Fish, salmon, Atlantic, farmed, raw",Finfish and Shellfish Products,64.89,208,20.42,13.42,0.00,0.0,,1.13,59,363
15237,"Fish, salmon, Atlantic, farmed, cooked, dry heat",Finfish and Shellfish Products,64.75,206,22.10,12.35,0.00,0.0,,1.15,61,384
15238,"Fish, salmon, coho, farmed, raw",Finfish and Shellfish Products,70.47,160,21.27,7.67,0.00,0.0,,1.30,47,450
15239,"Fish, salmon, coho, farmed, cooked, dry heat",Finfish and Shellfish Products,67.00,178,24.30,8.23,0.00,0.0,,1.40,52,460
15240,"Fish, trout, rainbow, farmed, raw",Finfish and Shellfish Products,73.80,141,19.94,6.18,0.00,0.0,0.00,1.21,51,377
15241,"Fish, trout, rainbow, farmed, cooked, dry heat",Finfish and Shellfish Products,68.72,168,23.80,7.38,0.00,0.0,0.00,1.44,61,450
15242,"Crustaceans, crayfish, mixed species, farmed, raw",Finfish and Shellfish Products,84.05,72,14.85,0.97,0.00,0.0,,1.00,62,261
15243,"Crustaceans, crayfish, mixed species, farmed, cooked, moist heat",Finfish and Shellfish Products,80.80,87,17.52,1.30,0.00,0.0,,1.07,97,238
15244,"Mollusks, oyster, eastern, wild, cooked, dry heat",Finfish and Shellfish Products,82.98,79,8.87,2.65,4.23,0.0,0.96,1.27,132,242
15245,"Mollusks, oyster, eastern, farmed, raw",Finfish and Shellfish Products,86.20,59,5.22,1.55,5.53,0.0,,1.50,178,124
15246,"Mollusks, oyster, eastern, farmed, cooked, dry heat",Finfish and Shellfish Products,81.95,79,7.00,2.12,7.28,0.0,,1.65,163,152
15247,"Fish, salmon, coho, wild, cooked, dry heat",Finfish and Shellfish Products,71.50,139,23.45,4.30,0.00,0.0,0.00,1.30,58,434
15250,"Mollusks, conch, baked or broiled",Finfish and Shellfish Products,69.40,130,26.30,1.20,1.70,0.0,0.00,1.40,153,163
15253,"Salmon, sockeye, canned, total can contents",Finfish and Shellfish Products,71.07,153,20.63,7.17,0.00,0.0,0.00,2.45,433,329
15260,"Fish, salmon, pink, canned, drained solids",Finfish and Shellfish Products,70.71,138,23.10,5.02,0.00,0.0,0.00,2.50,381,333
15261,"Fish, tilapia, raw",Finfish and Shellfish Products,78.08,96,20.08,1.70,0.00,0.0,0.00,0.93,52,302
15262,"Fish, tilapia, cooked, dry heat",Finfish and Shellfish Products,71.59,128,26.15,2.65,0.00,0.0,0.00,1.14,56,380
15264,"Salmon, sockeye, canned, drained solids, without skin and bones",Finfish and Shellfish Products,67.78,158,26.33,5.87,0.00,0.0,0.00,1.89,386,312
15265,"Fish, Salmon, pink, canned, drained solids, without skin and bones",Finfish and Shellfish Products,70.63,136,24.62,4.21,0.00,0.0,0.00,1.90,378,326
15266,"Fish, pollock, Alaska, untreated, raw",Finfish and Shellfish Products,81.99,70,17.17,0.19,0.00,,,1.34,159,331
15267,"Fish, pollock, Alaska, untreated, cooked",Finfish and Shellfish Products,79.34,80,19.42,0.26,0.00,,,1.42,166,364
15268,"Fish, cod, Pacific, untreated, raw",Finfish and Shellfish Products,81.86,72,17.54,0.20,0.00,,,1.19,109,329
15269,"Fish, cod, Pacific, untreated, cooked",Finfish and Shellfish Products,78.37,84,20.42,0.25,0.00,,,1.33,134,372
15270,"Crustaceans, shrimp, untreated, raw",Finfish and Shellfish Products,78.45,85,20.10,0.51,0.00,,,1.23,119,264
15271,"Crustaceans, shrimp, untreated, cooked",Finfish and Shellfish Products,74.33,99,23.98,0.28,0.20,,,1.22,111,259
15272,"Fish, salmon, sockeye, untreated, raw",Finfish and Shellfish Products,71.86,131,22.56,4.53,0.00,,,1.33,70,360
15273,"Fish, salmon, sockeye, untreated, cooked",Finfish and Shellfish Products,69.51,143,25.23,4.65,0.00,,,1.38,70,410
15274,"Fish, trout, brook, raw, New York State",Finfish and Shellfish Products,75.67,110,21.23,2.73,0.00,,,1.32,45,417
16001,"Beans, adzuki, mature seeds, raw",Legumes and Legume Products,13.44,329,19.87,0.53,62.90,12.7,,3.26,5,1254
16002,"Beans, adzuki, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.29,128,7.52,0.10,24.77,7.3,,1.33,8,532
16003,"Beans, adzuki, mature seeds, canned, sweetened",Legumes and Legume Products,40.58,237,3.80,0.03,55.01,,,0.58,218,119
16004,"Beans, adzuki, yokan, mature seeds",Legumes and Legume Products,35.45,260,3.29,0.12,60.72,,,0.42,83,45
16005,"Beans, baked, home prepared",Legumes and Legume Products,65.17,155,5.54,5.15,21.63,5.5,,2.51,422,358
16006,"Beans, baked, canned, plain or vegetarian",Legumes and Legume Products,72.00,94,4.75,0.37,21.14,4.1,7.96,1.75,343,224
16007,"Beans, baked, canned, with beef",Legumes and Legume Products,71.33,121,6.38,3.45,16.91,,,1.94,475,320
16008,"Beans, baked, canned, with franks",Legumes and Legume Products,69.34,142,6.75,6.57,15.39,6.9,6.53,1.95,430,235
16009,"Beans, baked, canned, with pork",Legumes and Legume Products,71.46,106,5.19,1.55,19.99,5.5,,1.81,414,309
16010,"Beans, baked, canned, with pork and sweet sauce",Legumes and Legume Products,70.78,111,5.21,1.38,21.09,4.3,8.36,1.55,337,255
16011,"Beans, baked, canned, with pork and tomato sauce",Legumes and Legume Products,73.50,94,5.15,0.93,18.69,4.0,5.67,1.73,437,295
16014,"Beans, black, mature seeds, raw",Legumes and Legume Products,11.02,341,21.60,1.42,62.36,15.5,2.12,3.60,5,1483
16015,"Beans, black, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,65.74,132,8.86,0.54,23.71,8.7,,1.15,1,355
16016,"Beans, black turtle, mature seeds, raw",Legumes and Legume Products,11.00,339,21.25,0.90,63.25,15.5,2.12,3.60,9,1500
16017,"Beans, black turtle, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,65.74,130,8.18,0.35,24.35,8.3,0.32,1.38,3,433
16018,"Beans, black turtle, mature seeds, canned",Legumes and Legume Products,75.64,91,6.03,0.29,16.55,6.9,0.23,1.49,384,308
16019,"Beans, cranberry (roman), mature seeds, raw",Legumes and Legume Products,12.39,335,23.03,1.23,60.05,24.7,,3.31,6,1332
16020,"Beans, cranberry (roman), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,64.65,136,9.34,0.46,24.46,10.0,,1.09,1,387
16021,"Beans, cranberry (roman), mature seeds, canned",Legumes and Legume Products,77.56,83,5.54,0.28,15.12,6.3,,1.50,332,260
16022,"Beans, french, mature seeds, raw",Legumes and Legume Products,10.77,343,18.81,2.02,64.11,25.2,,4.30,18,1316
16023,"Beans, french, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.57,129,7.05,0.76,24.02,9.4,,1.61,6,370
16024,"Beans, great northern, mature seeds, raw",Legumes and Legume Products,10.70,339,21.86,1.14,62.37,20.2,2.26,3.93,14,1387
16025,"Beans, great northern, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.00,118,8.33,0.45,21.09,7.0,,1.14,2,391
16026,"Beans, great northern, mature seeds, canned",Legumes and Legume Products,69.89,114,7.37,0.39,21.02,4.9,1.41,1.33,4,351
16027,"Beans, kidney, all types, mature seeds, raw",Legumes and Legume Products,11.75,333,23.58,0.83,60.01,24.9,2.23,3.83,24,1406
16028,"Beans, kidney, all types, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.94,127,8.67,0.50,22.80,6.4,0.32,1.09,1,405
16029,"Beans, kidney, all types, mature seeds, canned",Legumes and Legume Products,78.04,82,5.22,0.60,14.50,5.3,1.85,1.64,296,237
16030,"Beans, kidney, california red, mature seeds, raw",Legumes and Legume Products,11.75,330,24.37,0.25,59.80,24.9,,3.83,11,1490
16031,"Beans, kidney, california red, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.93,124,9.13,0.09,22.41,9.3,,1.44,4,419
16032,"Beans, kidney, red, mature seeds, raw",Legumes and Legume Products,11.75,337,22.53,1.06,61.29,15.2,2.10,3.37,12,1359
16033,"Beans, kidney, red, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.94,127,8.67,0.50,22.80,7.4,0.32,1.09,2,403
16034,"Beans, kidney, red, mature seeds, canned, solids and liquids",Legumes and Legume Products,77.96,81,5.22,0.36,14.83,5.3,1.85,1.64,256,260
16035,"Beans, kidney, royal red, mature seeds, raw",Legumes and Legume Products,11.90,329,25.33,0.45,58.33,24.9,,4.00,13,1346
16036,"Beans, kidney, royal red, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,66.99,123,9.49,0.17,21.85,9.3,,1.50,5,378
16037,"Beans, navy, mature seeds, raw",Legumes and Legume Products,12.10,337,22.33,1.50,60.75,24.4,3.88,3.32,5,1185
16038,"Beans, navy, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,63.81,140,8.23,0.62,26.05,10.5,0.37,1.30,0,389
16039,"Beans, navy, mature seeds, canned",Legumes and Legume Products,70.45,113,7.53,0.43,20.45,5.1,0.28,1.14,448,288
16040,"Beans, pink, mature seeds, raw",Legumes and Legume Products,10.06,343,20.96,1.13,64.19,12.7,2.14,3.66,8,1464
16041,"Beans, pink, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,61.20,149,9.06,0.49,27.91,5.3,0.36,1.34,2,508
16042,"Beans, pinto, mature seeds, raw",Legumes and Legume Products,11.33,347,21.42,1.23,62.55,15.5,2.11,3.46,12,1393
16043,"Beans, pinto, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,62.95,143,9.01,0.65,26.22,9.0,0.34,1.17,1,436
16044,"Beans, pinto, mature seeds, canned, solids and liquids",Legumes and Legume Products,78.19,82,4.60,0.56,15.18,4.6,1.02,1.48,268,276
16045,"Beans, small white, mature seeds, raw",Legumes and Legume Products,11.71,336,21.11,1.18,62.25,24.9,,3.75,12,1542
16046,"Beans, small white, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,63.24,142,8.97,0.64,25.81,10.4,,1.34,2,463
16047,"Beans, yellow, mature seeds, raw",Legumes and Legume Products,11.10,345,22.00,2.60,60.70,25.1,,3.60,12,1042
16048,"Beans, yellow, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,62.98,144,9.16,1.08,25.27,10.4,,1.50,5,325
16049,"Beans, white, mature seeds, raw",Legumes and Legume Products,11.32,333,23.36,0.85,60.27,15.2,2.11,4.20,16,1795
16050,"Beans, white, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,63.08,139,9.73,0.35,25.09,6.3,0.34,1.75,6,561
16051,"Beans, white, mature seeds, canned",Legumes and Legume Products,70.10,114,7.26,0.29,21.20,4.8,0.29,1.15,5,454
16052,"Broadbeans (fava beans), mature seeds, raw",Legumes and Legume Products,10.98,341,26.12,1.53,58.29,25.0,5.70,3.08,13,1062
16053,"Broadbeans (fava beans), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,71.54,110,7.60,0.40,19.65,5.4,1.82,0.81,5,268
16054,"Broadbeans (fava beans), mature seeds, canned",Legumes and Legume Products,80.32,71,5.47,0.22,12.41,3.7,,1.58,453,242
16055,Carob flour,Legumes and Legume Products,3.58,222,4.62,0.65,88.88,39.8,49.08,2.27,35,827
16056,"Chickpeas (garbanzo beans, bengal gram), mature seeds, raw",Legumes and Legume Products,11.53,364,19.30,6.04,60.65,17.4,10.70,2.48,24,875
16057,"Chickpeas (garbanzo beans, bengal gram), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,60.21,164,8.86,2.59,27.42,7.6,4.80,0.92,7,291
16058,"Chickpeas (garbanzo beans, bengal gram), mature seeds, canned, solids and liquids",Legumes and Legume Products,78.55,88,4.92,1.95,13.49,4.4,,1.09,278,144
16059,"Chili with beans, canned",Legumes and Legume Products,75.51,112,5.71,5.49,11.91,4.4,1.19,1.38,522,365
16060,"Cowpeas, catjang, mature seeds, raw",Legumes and Legume Products,11.05,343,23.85,2.07,59.64,10.7,,3.39,58,1375
16061,"Cowpeas, catjang, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.70,117,8.13,0.71,20.32,3.6,,1.16,19,375
16062,"Cowpeas, common (blackeyes, crowder, southern), mature seeds, raw",Legumes and Legume Products,11.95,336,23.52,1.26,60.03,10.6,6.90,3.24,16,1112
16063,"Cowpeas, common (blackeyes, crowder, southern), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,70.04,116,7.73,0.53,20.76,6.5,3.30,0.94,4,278
16064,"Cowpeas, common (blackeyes, crowder, southern), mature seeds, canned, plain",Legumes and Legume Products,79.63,77,4.74,0.55,13.63,3.3,,1.45,293,172
16065,"Cowpeas, common (blackeyes, crowder, southern), mature seeds, canned with pork",Legumes and Legume Products,77.59,83,2.74,1.60,16.53,3.3,,1.54,350,178
16067,"Hyacinth beans, mature seeds, raw",Legumes and Legume Products,9.38,344,23.90,1.69,60.74,25.6,,4.29,21,1235
16068,"Hyacinth beans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.13,117,8.14,0.58,20.69,,,1.46,7,337
16069,"Lentils, raw",Legumes and Legume Products,10.40,343,25.80,1.06,60.08,30.5,2.03,2.67,6,955
16070,"Lentils, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.64,116,9.02,0.38,20.13,7.9,1.80,0.83,2,369
16071,"Lima beans, large, mature seeds, raw",Legumes and Legume Products,10.17,338,21.46,0.69,63.38,19.0,8.50,4.30,18,1724
16072,"Lima beans, large, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.79,115,7.80,0.38,20.88,7.0,2.90,1.15,2,508
16073,"Lima beans, large, mature seeds, canned",Legumes and Legume Products,77.08,79,4.93,0.17,14.91,4.8,,2.92,336,220
16074,"Lima beans, thin seeded (baby), mature seeds, raw",Legumes and Legume Products,12.07,335,20.62,0.93,62.83,20.6,8.32,3.55,13,1403
16075,"Lima beans, thin seeded (baby), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,67.15,126,8.04,0.38,23.31,7.7,,1.12,3,401
16076,"Lupins, mature seeds, raw",Legumes and Legume Products,10.44,371,36.17,9.74,40.37,18.9,,3.28,15,1013
16077,"Lupins, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,71.08,119,15.57,2.92,9.88,2.8,,0.55,4,245
16078,"Mothbeans, mature seeds, raw",Legumes and Legume Products,9.68,343,22.94,1.61,61.52,,,4.26,30,1191
16079,"Mothbeans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.23,117,7.81,0.55,20.96,,,1.45,10,304
16080,"Mung beans, mature seeds, raw",Legumes and Legume Products,9.05,347,23.86,1.15,62.62,16.3,6.60,3.32,15,1246
16081,"Mung beans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,72.66,105,7.02,0.38,19.15,7.6,2.00,0.79,2,266
16082,"Noodles, chinese, cellophane or long rice (mung beans), dehydrated",Legumes and Legume Products,13.42,351,0.16,0.06,86.09,0.5,0.00,0.27,10,10
16083,"Mungo beans, mature seeds, raw",Legumes and Legume Products,10.80,341,25.21,1.64,58.99,18.3,,3.36,38,983
16084,"Mungo beans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,72.51,105,7.54,0.55,18.34,6.4,2.01,1.06,7,231
16085,"Peas, split, mature seeds, raw",Legumes and Legume Products,11.27,341,24.55,1.16,60.37,25.5,8.00,2.65,15,981
16086,"Peas, split, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,69.49,118,8.34,0.39,21.10,8.3,2.90,0.68,2,362
16087,"Peanuts, all types, raw",Legumes and Legume Products,6.50,567,25.80,49.24,16.13,8.5,3.97,2.33,18,705
16089,"Peanuts, all types, oil-roasted, with salt",Legumes and Legume Products,1.45,599,28.03,52.50,15.26,9.4,4.18,2.75,320,726
16090,"Peanuts, all types, dry-roasted, with salt",Legumes and Legume Products,1.55,585,23.68,49.66,21.51,8.0,4.18,3.60,667,658
16091,"Peanuts, spanish, raw",Legumes and Legume Products,6.39,570,26.15,49.60,15.82,9.5,,2.03,22,744
16092,"Peanuts, spanish, oil-roasted, with salt",Legumes and Legume Products,1.78,579,28.01,49.04,17.45,8.9,,3.72,433,776
16093,"Peanuts, valencia, raw",Legumes and Legume Products,4.26,570,25.09,47.58,20.91,8.7,,2.17,1,332
16094,"Peanuts, valencia, oil-roasted, with salt",Legumes and Legume Products,2.12,589,27.04,51.24,16.30,8.9,,3.29,772,612
16095,"Peanuts, virginia, raw",Legumes and Legume Products,6.91,563,25.19,48.75,16.54,8.5,3.95,2.61,10,690
16096,"Peanuts, virginia, oil-roasted, with salt",Legumes and Legume Products,2.17,578,25.87,48.62,19.86,8.9,,3.48,433,652
16097,"Peanut butter, chunk style, with salt",Legumes and Legume Products,1.14,589,24.06,49.94,21.57,8.0,8.41,3.29,486,745
16098,"Peanut butter, smooth style, with salt",Legumes and Legume Products,1.81,588,25.09,50.39,19.56,6.0,9.22,3.15,459,649
16099,"Peanut flour, defatted",Legumes and Legume Products,7.80,327,52.20,0.55,34.70,15.8,8.22,4.75,180,1290
16100,"Peanut flour, low fat",Legumes and Legume Products,7.80,428,33.80,21.90,31.27,15.8,,5.23,1,1358
16101,"Pigeon peas (red gram), mature seeds, raw",Legumes and Legume Products,10.59,343,21.70,1.49,62.78,15.0,,3.45,17,1392
16102,"Pigeon peas (red gram), mature seeds, cooked, boiled, without salt",Legumes and Legume Products,68.55,121,6.76,0.38,23.25,6.7,,1.06,5,384
16104,"Bacon, meatless",Legumes and Legume Products,48.98,310,10.68,29.52,6.32,2.6,0.00,4.50,1465,170
16106,Meat extender,Legumes and Legume Products,7.48,313,38.11,2.97,38.32,17.5,,13.13,10,1902
16107,"Sausage, meatless",Legumes and Legume Products,50.40,257,18.53,18.16,9.84,2.8,0.00,3.07,888,231
16108,"Soybeans, mature seeds, raw",Legumes and Legume Products,8.54,446,36.49,19.94,30.16,9.3,7.33,4.87,2,1797
16109,"Soybeans, mature cooked, boiled, without salt",Legumes and Legume Products,62.55,173,16.64,8.97,9.93,6.0,3.00,1.91,1,515
16110,"Soybeans, mature seeds, roasted, salted",Legumes and Legume Products,1.95,471,35.22,25.40,33.55,17.7,4.20,3.88,163,1470
16111,"Soybeans, mature seeds, dry roasted",Legumes and Legume Products,0.80,451,39.58,21.62,32.72,8.1,,5.28,2,1364
16112,Miso,Legumes and Legume Products,43.02,199,11.69,6.01,26.47,5.4,6.20,12.81,3728,210
16113,Natto,Legumes and Legume Products,55.02,212,17.72,11.00,14.36,5.4,4.89,1.90,7,729
16114,Tempeh,Legumes and Legume Products,59.65,193,18.54,10.80,9.39,,,1.62,9,412
16115,"Soy flour, full-fat, raw",Legumes and Legume Products,5.16,436,34.54,20.65,35.19,9.6,7.50,4.46,13,2515
16116,"Soy flour, full-fat, roasted",Legumes and Legume Products,3.81,441,34.80,21.86,33.67,9.7,7.61,5.86,12,2041
16117,"Soy flour, defatted",Legumes and Legume Products,7.25,330,47.01,1.22,38.37,17.5,18.88,6.15,20,2384
16118,"Soy flour, low-fat",Legumes and Legume Products,4.61,375,45.51,8.90,34.93,16.0,10.53,6.04,9,2090
16119,"Soy meal, defatted, raw",Legumes and Legume Products,6.94,339,44.95,2.39,40.14,,,5.58,3,2490
16120,"Soymilk, original and vanilla, unfortified",Legumes and Legume Products,88.05,54,3.27,1.75,6.28,0.6,3.99,0.65,51,118
16121,"Soy protein concentrate, produced by alcohol extraction",Legumes and Legume Products,5.80,331,58.13,0.46,30.91,5.5,20.00,4.70,3,2202
16122,Soy protein isolate,Legumes and Legume Products,4.98,338,80.69,3.39,7.36,5.6,0.00,3.58,1005,81
16123,Soy sauce made from soy and wheat (shoyu),Legumes and Legume Products,71.15,53,8.14,0.57,4.93,0.8,0.40,15.21,5493,435
16124,Soy sauce made from soy (tamari),Legumes and Legume Products,66.00,60,10.51,0.10,5.57,0.8,1.70,17.82,5586,212
16125,Soy sauce made from hydrolyzed vegetable protein,Legumes and Legume Products,68.02,60,7.00,0.51,7.84,0.5,1.30,16.63,6820,447
16126,"Tofu, firm, prepared with calcium sulfate and magnesium chloride (nigari)",Legumes and Legume Products,84.95,70,8.19,4.17,1.69,0.9,0.60,1.01,12,148
16127,"Tofu, soft, prepared with calcium sulfate and magnesium chloride (nigari)",Legumes and Legume Products,87.26,61,6.55,3.69,1.80,0.2,0.70,0.70,8,120
16128,"Tofu, dried-frozen (koyadofu)",Legumes and Legume Products,5.78,480,47.94,30.34,14.56,7.2,,1.38,6,20
16129,"Tofu, fried",Legumes and Legume Products,50.52,271,17.19,20.18,10.49,3.9,2.72,1.62,16,146
16130,Okara,Legumes and Legume Products,81.64,77,3.22,1.73,12.54,,,0.88,9,213
16132,"Tofu, salted and fermented (fuyu)",Legumes and Legume Products,70.01,116,8.15,8.00,5.15,,,8.69,2873,75
16133,"Yardlong beans, mature seeds, raw",Legumes and Legume Products,8.43,347,24.33,1.31,61.91,11.0,,4.03,17,1157
16134,"Yardlong beans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,68.80,118,8.29,0.45,21.09,3.8,,1.37,5,315
16135,"Winged beans, mature seeds, raw",Legumes and Legume Products,8.34,409,29.65,16.32,41.71,25.9,,3.98,38,977
16136,"Winged beans, mature seeds, cooked, boiled, without salt",Legumes and Legume Products,67.19,147,10.62,5.84,14.94,,,1.43,13,280
16137,"Hummus, home prepared",Legumes and Legume Products,64.87,177,4.86,8.59,20.12,4.0,0.27,1.56,242,173
16138,"Falafel, home-prepared",Legumes and Legume Products,34.62,333,13.31,17.80,31.84,,,2.43,294,585
16139,"Soymilk, original and vanilla, with added calcium, vitamins A and D",Legumes and Legume Products,90.36,43,2.60,1.47,4.92,0.2,3.65,0.65,47,122
16144,"Lentils, pink, raw",Legumes and Legume Products,11.79,345,24.95,2.17,59.15,10.8,,1.94,7,578
16145,"Beans, red, kidney, mature seeds, canned, drained solids",Legumes and Legume Products,68.11,124,7.98,1.05,21.49,5.5,3.80,1.36,231,277
16146,"Beans, pinto, canned, drained solids",Legumes and Legume Products,70.60,114,6.99,0.90,20.22,5.5,0.54,1.30,239,274
16147,"Veggie burgers or soyburgers, unprepared",Legumes and Legume Products,61.21,177,15.70,6.30,14.27,4.9,1.07,2.52,569,333
16149,"Peanut spread, reduced sugar",Legumes and Legume Products,1.93,650,24.80,54.89,14.23,7.8,3.34,4.15,447,818
16150,"Peanut butter, smooth, reduced fat",Legumes and Legume Products,1.20,520,25.90,34.00,35.65,5.2,9.28,3.25,540,669
16157,Chickpea flour (besan),Legumes and Legume Products,10.28,387,22.39,6.69,57.82,10.8,10.85,2.82,64,846
16158,"Hummus, commercial",Legumes and Legume Products,66.59,166,7.90,9.60,14.29,6.0,,1.66,379,228
16159,"Tofu, extra firm, prepared with nigari",Legumes and Legume Products,81.28,91,9.89,5.83,2.00,0.4,0.50,1.00,8,132
16160,"Tofu, hard, prepared with nigari",Legumes and Legume Products,71.12,146,12.68,9.99,4.39,0.6,,1.82,2,146
16166,"Soymilk, chocolate, unfortified",Legumes and Legume Products,85.61,63,2.26,1.53,9.95,0.4,7.86,0.65,53,143
16168,"Soymilk, chocolate, with added calcium, vitamins A and D",Legumes and Legume Products,85.61,63,2.26,1.53,9.95,0.4,7.86,0.65,53,143
16171,"Refried beans, canned, vegetarian",Legumes and Legume Products,78.39,83,5.28,0.87,13.50,4.7,0.59,1.95,430,344
16172,"Refried beans, canned, fat-free",Legumes and Legume Products,78.69,79,5.34,0.45,13.50,4.7,0.61,2.01,438,344
16173,"Frijoles rojos volteados (Refried beans, red, canned)",Legumes and Legume Products,70.71,144,5.00,6.93,15.47,4.7,,1.89,375,310
16174,"Tempeh, cooked",Legumes and Legume Products,59.56,196,18.19,11.38,9.35,,,1.53,14,401
16222,"Soymilk (all flavors), unsweetened, with added calcium, vitamins A and D",Legumes and Legume Products,93.14,33,2.86,1.61,1.74,0.5,0.41,0.64,37,120
16225,"Soymilk, original and vanilla, light, with added calcium, vitamins A and D",Legumes and Legume Products,92.69,30,2.38,0.77,3.51,0.3,2.61,0.64,48,117
16227,"Soymilk, chocolate and other flavors, light, with added calcium, vitamins A and D",Legumes and Legume Products,88.38,47,2.10,0.64,8.24,0.7,7.13,0.64,46,144
16228,"Soymilk, original and vanilla, light, unsweetened, with added calcium, vitamins A and D",Legumes and Legume Products,92.03,34,2.62,0.85,3.85,0.6,0.41,0.64,63,117
16229,"Soymilk (All flavors), lowfat, with added calcium, vitamins A and D",Legumes and Legume Products,89.89,43,1.65,0.62,7.20,0.8,3.50,0.64,37,64
16230,"Soymilk (all flavors), nonfat, with added calcium, vitamins A and D",Legumes and Legume Products,92.67,28,2.47,0.04,4.14,0.2,3.65,0.64,57,105
16231,"Soymilk, chocolate, nonfat, with added calcium, vitamins A and D",Legumes and Legume Products,88.38,44,2.47,0.04,8.51,0.2,3.65,0.64,57,105
16316,"Beans, black, mature seeds, canned, low sodium",Legumes and Legume Products,75.64,91,6.03,0.29,16.55,6.9,0.23,1.49,138,308
16326,"Beans, great northern, mature seeds, canned, low sodium",Legumes and Legume Products,69.89,114,7.37,0.39,21.02,4.9,1.41,1.33,177,351
16335,"Beans, kidney, red, mature seeds, canned, drained solids, rinsed in tap water",Legumes and Legume Products,68.86,121,8.12,0.93,20.80,7.5,,1.29,208,250
16337,"Beans, mature, red kidney, canned, solids and liquid, low sodium",Legumes and Legume Products,77.96,81,5.22,0.36,14.83,5.3,1.85,1.64,117,260
16345,"Beans, pinto, mature seeds, canned, drained solids, rinsed in tap water",Legumes and Legume Products,70.00,117,7.04,0.97,20.77,,,1.22,212,234
16347,"Beans, pinto, mature seeds, canned, solids and liquids, low sodium",Legumes and Legume Products,78.19,82,4.60,0.56,15.18,4.6,1.02,1.48,146,276
16358,"Chickpeas (garbanzo beans, bengal gram), mature seeds, canned, drained solids",Legumes and Legume Products,66.72,139,7.05,2.77,22.53,6.4,4.01,0.91,246,126
16359,"Chickpeas (garbanzo beans, bengal gram), mature seeds, canned, drained, rinsed in tap water",Legumes and Legume Products,66.87,138,7.04,2.47,22.87,6.3,4.00,0.74,212,109
16360,"Chickpeas (garbanzo beans, bengal gram), mature seeds, canned, solids and liquids, low sodium",Legumes and Legume Products,78.55,88,4.92,1.95,13.49,4.4,2.59,1.09,132,144
16389,"Peanuts, all types, oil-roasted, without salt",Legumes and Legume Products,1.45,599,28.03,52.50,15.26,9.4,4.18,2.75,6,726
16390,"Peanuts, all types, dry-roasted, without salt",Legumes and Legume Products,1.55,585,23.68,49.66,21.51,8.0,4.18,3.60,6,658
16392,"Peanuts, spanish, oil-roasted, without salt",Legumes and Legume Products,1.78,579,28.01,49.04,17.45,8.9,,3.72,6,776
16394,"Peanuts, valencia, oil-roasted, without salt",Legumes and Legume Products,2.12,589,27.04,51.24,16.30,8.9,,3.29,6,612
16396,"Peanuts, virginia, oil-roasted, without salt",Legumes and Legume Products,2.17,578,25.87,48.62,19.86,8.9,,3.48,6,652
16397,"Peanut butter, chunk style, without salt",Legumes and Legume Products,1.14,589,24.06,49.94,21.57,8.0,8.41,3.29,17,745
16398,"Peanut butter, smooth style, without salt",Legumes and Legume Products,1.81,588,25.09,50.39,19.56,6.0,9.22,3.15,17,649
16399,"Peanut butter with omega-3, creamy",Legumes and Legume Products,0.99,608,24.47,54.17,17.00,6.1,3.11,3.37,356,780
16403,"Refried beans, canned, traditional, reduced sodium",Legumes and Legume Products,76.15,91,5.41,1.17,15.26,5.1,0.46,2.01,138,336
16410,"Soybeans, mature seeds, roasted, no salt added",Legumes and Legume Products,1.95,471,35.22,25.40,33.55,17.7,,3.88,4,1470
16420,"Soy protein concentrate, produced by acid wash",Legumes and Legume Products,5.80,331,58.13,0.46,30.91,5.5,20.00,4.70,900,450
16422,"Soy protein isolate, potassium type",Legumes and Legume Products,4.98,326,80.69,0.53,10.22,5.6,0.00,3.58,50,1590
16424,"Soy sauce made from soy and wheat (shoyu), low sodium",Legumes and Legume Products,75.14,57,9.05,0.30,5.59,0.7,0.50,9.92,3598,352
16425,"Soy sauce, reduced sodium, made from hydrolyzed vegetable protein",Legumes and Legume Products,63.33,90,8.19,0.31,14.44,0.3,5.63,13.74,2890,3098
16426,"Tofu, raw, firm, prepared with calcium sulfate",Legumes and Legume Products,69.83,145,15.78,8.72,4.27,2.3,,1.40,14,237
16427,"Tofu, raw, regular, prepared with calcium sulfate",Legumes and Legume Products,84.55,76,8.08,4.78,1.88,0.3,,0.72,7,121
16428,"Tofu, dried-frozen (koyadofu), prepared with calcium sulfate",Legumes and Legume Products,5.78,472,47.94,30.34,12.79,1.2,,3.15,6,20
16429,"Tofu, fried, prepared with calcium sulfate",Legumes and Legume Products,50.52,271,17.19,20.18,10.50,3.9,,1.62,16,146
16432,"Tofu, salted and fermented (fuyu), prepared with calcium sulfate",Legumes and Legume Products,70.01,116,8.15,8.00,5.15,,,8.69,2873,75
17001,"Lamb, domestic, composite of trimmed retail cuts, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",60.70,267,16.88,21.59,0.00,0.0,,0.88,58,230
17002,"Lamb, domestic, composite of trimmed retail cuts, separable lean and fat, trimmed to 1/4"" fat, choice, cooked","Lamb, Veal, and Game Products",53.72,294,24.52,20.94,0.00,0.0,0.00,1.04,72,310
17003,"Lamb, domestic, composite of trimmed retail cuts, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",73.42,134,20.29,5.25,0.00,0.0,,1.06,66,280
17004,"Lamb, domestic, composite of trimmed retail cuts, separable lean only, trimmed to 1/4"" fat, choice, cooked","Lamb, Veal, and Game Products",61.96,206,28.22,9.52,0.00,0.0,,1.14,76,344
17007,"Lamb, domestic, foreshank, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",67.01,201,18.91,13.38,0.00,0.0,,0.95,72,214
17008,"Lamb, domestic, foreshank, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",56.80,243,28.37,13.46,0.00,0.0,0.00,0.91,72,257
17009,"Lamb, domestic, foreshank, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",74.86,120,21.08,3.29,0.00,0.0,,1.05,79,237
17010,"Lamb, domestic, foreshank, separable lean only, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",61.79,187,31.01,6.02,0.00,0.0,,0.94,74,267
17011,"Lamb, domestic, leg, whole (shank and sirloin), separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",64.32,230,17.91,17.07,0.00,0.0,,0.94,56,249
17012,"Lamb, domestic, leg, whole (shank and sirloin), separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",57.48,258,25.55,16.48,0.00,0.0,0.00,1.02,66,313
17013,"Lamb, domestic, leg, whole (shank and sirloin), separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",74.11,128,20.56,4.51,0.00,0.0,,1.07,62,289
17014,"Lamb, domestic, leg, whole (shank and sirloin), separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",63.89,191,28.30,7.74,0.00,0.0,0.00,1.09,68,338
17015,"Lamb, domestic, leg, shank half, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",67.17,201,18.58,13.49,0.00,0.0,,0.98,57,261
17016,"Lamb, domestic, leg, shank half, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",60.66,225,26.41,12.45,0.00,0.0,,1.05,65,326
17017,"Lamb, domestic, leg, shank half, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",74.44,125,20.52,4.19,0.00,0.0,,1.08,61,290
17018,"Lamb, domestic, leg, shank half, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",64.92,180,28.17,6.67,0.00,0.0,,1.10,66,342
17019,"Lamb, domestic, leg, sirloin half, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",60.30,272,16.94,22.11,0.00,0.0,,0.89,56,231
17020,"Lamb, domestic, leg, sirloin half, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",54.13,292,24.63,20.67,0.00,0.0,,0.99,68,301
17021,"Lamb, domestic, leg, sirloin half, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",73.57,134,20.55,5.08,0.00,0.0,,1.07,64,284
17022,"Lamb, domestic, leg, sirloin half, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",62.49,204,28.35,9.17,0.00,0.0,,1.09,71,333
17023,"Lamb, domestic, loin, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",56.55,310,16.32,26.63,0.00,0.0,,0.84,56,214
17024,"Lamb, domestic, loin, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",51.57,316,25.17,23.08,0.00,0.0,0.00,1.09,77,327
17025,"Lamb, domestic, loin, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",52.50,309,22.55,23.59,0.00,0.0,0.00,1.16,64,246
17026,"Lamb, domestic, loin, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",72.55,143,20.88,5.94,0.00,0.0,,1.06,68,276
17027,"Lamb, domestic, loin, separable lean only, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",60.98,216,29.99,9.73,0.00,0.0,0.00,1.24,84,376
17028,"Lamb, domestic, loin, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",62.76,202,26.59,9.76,0.00,0.0,,1.35,66,267
17029,"Lamb, domestic, rib, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",50.80,372,14.52,34.39,0.00,0.0,,0.74,56,190
17030,"Lamb, domestic, rib, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",47.06,361,22.13,29.59,0.00,0.0,0.00,1.14,76,270
17031,"Lamb, domestic, rib, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",47.89,359,21.12,29.82,0.00,0.0,,0.93,73,271
17032,"Lamb, domestic, rib, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",70.44,169,19.98,9.23,0.00,0.0,,1.01,72,265
17033,"Lamb, domestic, rib, separable lean only, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",58.83,235,27.74,12.95,0.00,0.0,0.00,1.40,85,313
17034,"Lamb, domestic, rib, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",60.13,232,26.16,13.31,0.00,0.0,,1.07,81,315
17035,"Lamb, domestic, shoulder, whole (arm and blade), separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",61.39,264,16.58,21.45,0.00,0.0,0.00,0.89,61,230
17036,"Lamb, domestic, shoulder, whole (arm and blade), separable lean and fat, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",45.20,344,28.68,24.55,0.00,0.0,,1.54,75,248
17037,"Lamb, domestic, shoulder, whole (arm and blade), separable lean and fat, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",55.03,278,24.42,19.26,0.00,0.0,,1.31,78,301
17038,"Lamb, domestic, shoulder, whole (arm and blade), separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",56.26,276,22.51,19.97,0.00,0.0,0.00,1.21,66,251
17039,"Lamb, domestic, shoulder, whole (arm and blade), separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",72.99,144,19.55,6.76,0.00,0.0,0.00,1.04,70,274
17040,"Lamb, domestic, shoulder, whole (arm and blade), separable lean only, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",49.96,283,32.81,15.89,0.00,0.0,,1.75,79,261
17041,"Lamb, domestic, shoulder, whole (arm and blade), separable lean only, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",61.38,210,27.12,10.50,0.00,0.0,0.00,1.45,83,324
17042,"Lamb, domestic, shoulder, whole (arm and blade), separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",63.32,204,24.94,10.77,0.00,0.0,0.00,1.33,68,265
17043,"Lamb, domestic, shoulder, arm, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",61.76,260,16.79,20.90,0.00,0.0,,0.90,60,238
17044,"Lamb, domestic, shoulder, arm, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",44.22,346,30.39,24.00,0.00,0.0,,1.10,72,306
17045,"Lamb, domestic, shoulder, arm, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",54.69,281,24.44,19.55,0.00,0.0,,1.31,77,309
17046,"Lamb, domestic, shoulder, arm, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",55.92,279,22.53,20.24,0.00,0.0,,1.21,65,259
17047,"Lamb, domestic, shoulder, arm, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",74.14,132,19.99,5.20,0.00,0.0,,1.07,69,287
17048,"Lamb, domestic, shoulder, arm, separable lean only, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",49.32,279,35.54,14.08,0.00,0.0,,1.22,76,338
17049,"Lamb, domestic, shoulder, arm, separable lean only, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",62.28,200,27.71,9.02,0.00,0.0,,1.48,82,340
17050,"Lamb, domestic, shoulder, arm, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",64.32,192,25.46,9.26,0.00,0.0,,1.36,67,277
17051,"Lamb, domestic, shoulder, blade, separable lean and fat, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",61.90,259,16.63,20.86,0.00,0.0,,0.89,62,229
17052,"Lamb, domestic, shoulder, blade, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",45.18,345,28.51,24.73,0.00,0.0,,1.53,75,243
17053,"Lamb, domestic, shoulder, blade, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",55.92,278,23.08,19.94,0.00,0.0,0.00,1.15,82,336
17054,"Lamb, domestic, shoulder, blade, separable lean and fat, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",55.85,281,22.25,20.61,0.00,0.0,,1.19,66,246
17055,"Lamb, domestic, shoulder, blade, separable lean only, trimmed to 1/4"" fat, choice, raw","Lamb, Veal, and Game Products",72.36,151,19.29,7.63,0.00,0.0,,1.03,70,268
17056,"Lamb, domestic, shoulder, blade, separable lean only, trimmed to 1/4"" fat, choice, cooked, braised","Lamb, Veal, and Game Products",49.64,288,32.35,16.64,0.00,0.0,,1.73,79,254
17057,"Lamb, domestic, shoulder, blade, separable lean only, trimmed to 1/4"" fat, choice, cooked, broiled","Lamb, Veal, and Game Products",62.46,211,25.48,11.32,0.00,0.0,,1.26,88,368
17058,"Lamb, domestic, shoulder, blade, separable lean only, trimmed to 1/4"" fat, choice, cooked, roasted","Lamb, Veal, and Game Products",62.82,209,24.61,11.57,0.00,0.0,,1.31,68,258
17059,"Lamb, domestic, cubed for stew or kabob (leg and shoulder), separable lean only, trimmed to 1/4"" fat, raw","Lamb, Veal, and Game Products",73.74,134,20.21,5.28,0.00,0.0,,1.06,65,284
17060,"Lamb, domestic, cubed for stew or kabob (leg and shoulder), separable lean only, trimmed to 1/4"" fat, cooked, braised","Lamb, Veal, and Game Products",56.23,223,33.69,8.80,0.00,0.0,0.00,1.77,70,260
17061,"Lamb, domestic, cubed for stew or kabob (leg and shoulder), separable lean only, trimmed to 1/4"" fat, cooked, broiled","Lamb, Veal, and Game Products",63.53,186,28.08,7.33,0.00,0.0,,1.48,76,335
17088,"Veal, composite of trimmed retail cuts, separable lean and fat, raw","Lamb, Veal, and Game Products",72.84,144,19.35,6.77,0.00,0.0,,1.04,82,315
17089,"Veal, composite of trimmed retail cuts, separable lean and fat, cooked","Lamb, Veal, and Game Products",57.08,231,30.10,11.39,0.00,0.0,0.00,1.20,87,325
17090,"Veal, composite of trimmed retail cuts, separable lean only, raw","Lamb, Veal, and Game Products",75.91,112,20.20,2.87,0.00,0.0,,1.08,86,328
17091,"Veal, composite of trimmed retail cuts, separable lean only, cooked","Lamb, Veal, and Game Products",60.16,196,31.90,6.58,0.00,0.0,0.00,1.23,89,338
17094,"Veal, leg (top round), separable lean and fat, raw","Lamb, Veal, and Game Products",74.80,117,20.98,3.08,0.00,0.0,0.00,1.12,63,367
17095,"Veal, leg (top round), separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",55.49,211,36.16,6.33,0.00,0.0,0.00,1.95,67,383
17096,"Veal, leg (top round), separable lean and fat, cooked, pan-fried, breaded","Lamb, Veal, and Game Products",51.31,238,27.29,9.18,9.91,0.3,0.57,2.31,454,371
17097,"Veal, leg (top round), separable lean and fat, cooked, pan-fried, not breaded","Lamb, Veal, and Game Products",58.34,211,31.75,8.35,0.00,0.0,0.00,1.40,76,425
17098,"Veal, leg (top round), separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",66.10,160,27.70,4.65,0.00,0.0,0.00,1.49,68,389
17099,"Veal, leg (top round), separable lean only, raw","Lamb, Veal, and Game Products",75.82,107,21.28,1.76,0.00,0.0,,1.14,64,372
17100,"Veal, leg (top round), separable lean only, cooked, braised","Lamb, Veal, and Game Products",56.18,203,36.71,5.09,0.00,0.0,,1.97,67,387
17101,"Veal, leg (top round), separable lean only, cooked, pan-fried, breaded","Lamb, Veal, and Game Products",53.14,216,28.41,6.27,9.84,0.2,0.57,2.34,455,383
17102,"Veal, leg (top round), separable lean only, cooked, pan-fried, not breaded","Lamb, Veal, and Game Products",60.68,183,33.17,4.62,0.00,0.0,0.00,1.44,77,442
17103,"Veal, leg (top round), separable lean only, cooked, roasted","Lamb, Veal, and Game Products",67.01,150,28.07,3.39,0.00,0.0,,1.50,68,393
17104,"Veal, loin, separable lean and fat, raw","Lamb, Veal, and Game Products",70.38,163,18.89,9.14,0.00,0.0,0.00,1.03,85,304
17105,"Veal, loin, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",52.02,284,30.19,17.21,0.00,0.0,0.00,1.11,80,280
17106,"Veal, loin, separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",60.73,217,24.80,12.32,0.00,0.0,0.00,1.38,93,325
17107,"Veal, loin, separable lean only, raw","Lamb, Veal, and Game Products",74.89,116,20.17,3.34,0.00,0.0,,1.09,91,324
17108,"Veal, loin, separable lean only, cooked, braised","Lamb, Veal, and Game Products",56.96,226,33.57,9.15,0.00,0.0,0.00,1.15,84,297
17109,"Veal, loin, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",64.59,175,26.32,6.94,0.00,0.0,0.00,1.43,96,340
17110,"Veal, rib, separable lean and fat, raw","Lamb, Veal, and Game Products",71.15,162,18.86,9.01,0.00,0.0,,0.97,89,290
17111,"Veal, rib, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",53.33,251,32.43,12.53,0.00,0.0,0.00,1.68,95,306
17112,"Veal, rib, separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",59.91,228,23.96,13.96,0.00,0.0,,1.05,92,295
17113,"Veal, rib, separable lean only, raw","Lamb, Veal, and Game Products",75.18,120,19.97,3.89,0.00,0.0,,1.02,95,306
17114,"Veal, rib, separable lean only, cooked, braised","Lamb, Veal, and Game Products",56.08,218,34.44,7.81,0.00,0.0,0.00,1.76,99,318
17115,"Veal, rib, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",64.64,177,25.76,7.44,0.00,0.0,,1.08,97,311
17116,"Veal, shoulder, whole (arm and blade), separable lean and fat, raw","Lamb, Veal, and Game Products",74.78,130,19.27,5.28,0.00,0.0,0.00,1.05,91,302
17117,"Veal, shoulder, whole (arm and blade), separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",56.40,228,32.06,10.14,0.00,0.0,0.00,1.24,95,309
17118,"Veal, shoulder, whole (arm and blade), separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",65.31,184,25.32,8.42,0.00,0.0,,1.40,96,322
17119,"Veal, shoulder, whole (arm and blade), separable lean only, raw","Lamb, Veal, and Game Products",76.58,112,19.79,3.00,0.00,0.0,,1.07,92,311
17120,"Veal, shoulder, whole (arm and blade), separable lean only, cooked, braised","Lamb, Veal, and Game Products",58.88,199,33.68,6.10,0.00,0.0,,1.27,97,319
17121,"Veal, shoulder, whole (arm and blade), separable lean only, cooked, roasted","Lamb, Veal, and Game Products",66.66,170,25.81,6.62,0.00,0.0,,1.41,97,327
17122,"Veal, shoulder, arm, separable lean and fat, raw","Lamb, Veal, and Game Products",74.05,132,19.34,5.44,0.00,0.0,0.00,1.08,83,327
17123,"Veal, shoulder, arm, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",55.28,236,33.63,10.24,0.00,0.0,,1.27,87,333
17124,"Veal, shoulder, arm, separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",64.68,183,25.46,8.25,0.00,0.0,,1.44,90,348
17125,"Veal, shoulder, arm, separable lean only, raw","Lamb, Veal, and Game Products",76.64,105,20.04,2.16,0.00,0.0,,1.12,86,339
17126,"Veal, shoulder, arm, separable lean only, cooked, braised","Lamb, Veal, and Game Products",58.20,201,35.73,5.33,0.00,0.0,,1.31,90,347
17127,"Veal, shoulder, arm, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",66.47,164,26.13,5.81,0.00,0.0,,1.47,91,356
17128,"Veal, shoulder, blade, separable lean and fat, raw","Lamb, Veal, and Game Products",75.15,129,19.23,5.20,0.00,0.0,,1.04,95,289
17129,"Veal, shoulder, blade, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",56.98,225,31.26,10.09,0.00,0.0,0.00,1.22,98,297
17130,"Veal, shoulder, blade, separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",65.54,186,25.15,8.67,0.00,0.0,,1.38,100,306
17131,"Veal, shoulder, blade, separable lean only, raw","Lamb, Veal, and Game Products",76.71,113,19.64,3.26,0.00,0.0,,1.06,97,295
17132,"Veal, shoulder, blade, separable lean only, cooked, braised","Lamb, Veal, and Game Products",59.24,198,32.66,6.48,0.00,0.0,0.00,1.24,101,305
17133,"Veal, shoulder, blade, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",66.90,171,25.64,6.88,0.00,0.0,,1.39,102,310
17134,"Veal, sirloin, separable lean and fat, raw","Lamb, Veal, and Game Products",71.85,152,19.07,7.81,0.00,0.0,0.00,1.04,76,329
17135,"Veal, sirloin, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",54.49,252,31.26,13.14,0.00,0.0,,1.16,79,321
17136,"Veal, sirloin, separable lean and fat, cooked, roasted","Lamb, Veal, and Game Products",62.66,202,25.14,10.45,0.00,0.0,0.00,1.39,83,351
17137,"Veal, sirloin, separable lean only, raw","Lamb, Veal, and Game Products",75.94,110,20.20,2.59,0.00,0.0,,1.09,80,348
17138,"Veal, sirloin, separable lean only, cooked, braised","Lamb, Veal, and Game Products",58.55,204,33.96,6.51,0.00,0.0,,1.20,81,339
17139,"Veal, sirloin, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",65.74,168,26.32,6.22,0.00,0.0,,1.44,85,365
17140,"Veal, cubed for stew (leg and shoulder), separable lean only, raw","Lamb, Veal, and Game Products",76.39,109,20.27,2.50,0.00,0.0,,1.10,83,331
17141,"Veal, cubed for stew (leg and shoulder), separable lean only, cooked, braised","Lamb, Veal, and Game Products",59.29,188,34.94,4.31,0.00,0.0,,1.89,93,342
17142,"Veal, ground, raw","Lamb, Veal, and Game Products",72.84,144,19.35,6.77,0.00,0.0,,1.04,82,315
17143,"Veal, ground, cooked, broiled","Lamb, Veal, and Game Products",66.76,172,24.38,7.56,0.00,0.0,0.00,1.31,83,337
17144,"Game meat, antelope, raw","Lamb, Veal, and Game Products",74.08,114,22.38,2.03,0.00,0.0,,1.10,51,353
17145,"Game meat, antelope, cooked, roasted","Lamb, Veal, and Game Products",65.90,150,29.45,2.67,0.00,0.0,,1.45,54,372
17146,"Game meat, bear, raw","Lamb, Veal, and Game Products",71.20,161,20.10,8.30,0.00,0.0,,0.70,,
17147,"Game meat, bear, cooked, simmered","Lamb, Veal, and Game Products",53.55,259,32.42,13.39,0.00,0.0,0.00,1.13,71,263
17148,"Bison, ground, grass-fed, cooked","Lamb, Veal, and Game Products",65.09,179,25.45,8.62,0.00,0.0,0.00,1.02,76,353
17149,"Bison, ground, grass-fed, raw","Lamb, Veal, and Game Products",71.59,146,20.23,7.21,0.05,0.0,0.00,0.91,70,328
17150,"Game meat, beaver, raw","Lamb, Veal, and Game Products",70.97,146,24.05,4.80,0.00,0.0,,1.00,51,348
17151,"Game meat, beaver, cooked, roasted","Lamb, Veal, and Game Products",57.92,212,34.85,6.96,0.00,0.0,0.00,1.45,59,403
17152,"Game meat, beefalo, composite of cuts, raw","Lamb, Veal, and Game Products",70.89,143,23.30,4.80,0.00,0.0,,0.92,78,436
17153,"Game meat, beefalo, composite of cuts, cooked, roasted","Lamb, Veal, and Game Products",61.70,188,30.66,6.32,0.00,0.0,,1.21,82,459
17156,"Game meat, bison, separable lean only, raw","Lamb, Veal, and Game Products",74.57,109,21.62,1.84,0.00,0.0,,1.20,54,343
17157,"Game meat, bison, separable lean only, cooked, roasted","Lamb, Veal, and Game Products",66.54,143,28.44,2.42,0.00,0.0,0.00,1.58,57,361
17158,"Game meat, boar, wild, raw","Lamb, Veal, and Game Products",72.54,122,21.51,3.33,0.00,0.0,,0.97,,
17159,"Game meat, boar, wild, cooked, roasted","Lamb, Veal, and Game Products",63.87,160,28.30,4.38,0.00,0.0,0.00,1.27,60,396
17160,"Game meat, buffalo, water, raw","Lamb, Veal, and Game Products",76.30,99,20.39,1.37,0.00,0.0,,1.05,53,297
17161,"Game meat, buffalo, water, cooked, roasted","Lamb, Veal, and Game Products",68.81,131,26.83,1.80,0.00,0.0,,1.39,56,313
17162,"Game meat, caribou, raw","Lamb, Veal, and Game Products",71.45,127,22.63,3.36,0.00,0.0,,1.14,57,295
17163,"Game meat, caribou, cooked, roasted","Lamb, Veal, and Game Products",62.43,167,29.77,4.42,0.00,0.0,0.00,1.50,60,310
17164,"Game meat, deer, raw","Lamb, Veal, and Game Products",73.57,120,22.96,2.42,0.00,0.0,0.00,1.16,51,318
17165,"Game meat, deer, cooked, roasted","Lamb, Veal, and Game Products",65.23,158,30.21,3.19,0.00,0.0,,1.52,54,335
17166,"Game meat, elk, raw","Lamb, Veal, and Game Products",74.38,111,22.95,1.45,0.00,0.0,,1.00,58,312
17167,"Game meat, elk, cooked, roasted","Lamb, Veal, and Game Products",66.28,146,30.19,1.90,0.00,0.0,,1.32,61,328
17168,"Goat, raw","Lamb, Veal, and Game Products",75.84,109,20.60,2.31,0.00,0.0,,1.11,82,385
17169,"Game meat, goat, cooked, roasted","Lamb, Veal, and Game Products",68.21,143,27.10,3.03,0.00,0.0,0.00,1.46,86,405
17170,"Game meat, horse, raw","Lamb, Veal, and Game Products",72.63,133,21.39,4.60,0.00,0.0,,0.99,53,360
17171,"Game meat, horse, cooked, roasted","Lamb, Veal, and Game Products",63.98,175,28.14,6.05,0.00,0.0,,1.31,55,379
17172,"Game meat, moose, raw","Lamb, Veal, and Game Products",75.55,102,22.24,0.74,0.00,0.0,,1.13,65,317
17173,"Game meat, moose, cooked, roasted","Lamb, Veal, and Game Products",67.83,134,29.27,0.97,0.00,0.0,0.00,1.49,69,334
17175,"Game meat, muskrat, cooked, roasted","Lamb, Veal, and Game Products",55.58,234,30.09,11.74,0.00,0.0,,1.71,95,320
17177,"Game meat, rabbit, domesticated, composite of cuts, raw","Lamb, Veal, and Game Products",72.82,136,20.05,5.55,0.00,0.0,,0.72,41,330
17178,"Game meat, rabbit, domesticated, composite of cuts, cooked, roasted","Lamb, Veal, and Game Products",60.61,197,29.06,8.05,0.00,0.0,,1.04,47,383
17179,"Game meat, rabbit, domesticated, composite of cuts, cooked, stewed","Lamb, Veal, and Game Products",58.82,206,30.38,8.41,0.00,0.0,0.00,1.09,37,300
17180,"Game meat, rabbit, wild, raw","Lamb, Veal, and Game Products",74.51,114,21.79,2.32,0.00,0.0,,1.12,50,378
17181,"Game meat, rabbit, wild, cooked, stewed","Lamb, Veal, and Game Products",61.37,173,33.02,3.51,0.00,0.0,0.00,1.70,45,343
17183,"Game meat, squirrel, raw","Lamb, Veal, and Game Products",73.83,120,21.23,3.21,0.00,0.0,,1.16,103,304
17184,"Game meat, squirrel, cooked, roasted","Lamb, Veal, and Game Products",62.07,173,30.77,4.69,0.00,0.0,0.00,1.68,119,352
17191,"Lamb, variety meats and by-products, heart, raw","Lamb, Veal, and Game Products",76.71,122,16.47,5.68,0.21,0.0,,0.93,89,316
17192,"Lamb, variety meats and by-products, heart, cooked, braised","Lamb, Veal, and Game Products",64.20,185,24.97,7.91,1.93,0.0,,0.99,63,188
17193,"Veal, variety meats and by-products, heart, raw","Lamb, Veal, and Game Products",77.69,110,17.18,3.98,0.08,0.0,,1.07,77,261
17194,"Veal, variety meats and by-products, heart, cooked, braised","Lamb, Veal, and Game Products",62.18,186,29.12,6.75,0.13,0.0,,1.82,58,199
17195,"Lamb, variety meats and by-products, kidneys, raw","Lamb, Veal, and Game Products",79.23,97,15.74,2.95,0.82,0.0,,1.26,156,277
17196,"Lamb, variety meats and by-products, kidneys, cooked, braised","Lamb, Veal, and Game Products",70.45,137,23.65,3.62,0.99,0.0,,1.29,151,178
17197,"Veal, variety meats and by-products, kidneys, raw","Lamb, Veal, and Game Products",79.07,99,15.76,3.12,0.85,0.0,,1.20,178,272
17198,"Veal, variety meats and by-products, kidneys, cooked, braised","Lamb, Veal, and Game Products",67.67,163,26.32,5.66,0.00,0.0,,1.45,110,159
17199,"Lamb, variety meats and by-products, liver, raw","Lamb, Veal, and Game Products",71.37,139,20.38,5.02,1.78,0.0,,1.44,70,313
17200,"Lamb, variety meats and by-products, liver, cooked, braised","Lamb, Veal, and Game Products",56.67,220,30.57,8.81,2.53,0.0,,1.42,56,221
17201,"Lamb, variety meats and by-products, liver, cooked, pan-fried","Lamb, Veal, and Game Products",56.20,238,25.53,12.65,3.78,0.0,,1.83,124,352
17202,"Veal, variety meats and by-products, liver, raw","Lamb, Veal, and Game Products",70.89,140,19.93,4.85,2.91,0.0,0.00,1.42,77,308
17203,"Veal, variety meats and by-products, liver, cooked, braised","Lamb, Veal, and Game Products",59.86,192,28.42,6.26,3.77,0.0,0.00,1.70,78,329
17204,"Veal, variety meats and by-products, liver, cooked, pan-fried","Lamb, Veal, and Game Products",59.87,193,27.37,6.51,4.47,0.0,0.00,1.79,85,353
17220,"Lamb, variety meats and by-products, tongue, raw","Lamb, Veal, and Game Products",66.60,222,15.70,17.17,0.00,0.0,,0.92,78,257
17221,"Lamb, variety meats and by-products, tongue, cooked, braised","Lamb, Veal, and Game Products",57.86,275,21.57,20.28,0.00,0.0,,0.73,67,158
17222,"Veal, variety meats and by-products, tongue, raw","Lamb, Veal, and Game Products",74.53,131,17.18,5.48,1.91,0.0,,0.89,82,271
17223,"Veal, variety meats and by-products, tongue, cooked, braised","Lamb, Veal, and Game Products",64.08,202,25.85,10.10,0.00,0.0,,0.91,64,162
17224,"Lamb, ground, raw","Lamb, Veal, and Game Products",59.47,282,16.56,23.41,0.00,0.0,0.00,0.87,59,222
17225,"Lamb, ground, cooked, broiled","Lamb, Veal, and Game Products",55.09,283,24.75,19.65,0.00,0.0,0.00,1.14,81,339
17229,"Lamb, domestic, foreshank, separable lean and fat, trimmed to 1/8"" fat, cooked, braised","Lamb, Veal, and Game Products",56.80,243,28.37,13.46,0.00,0.0,,0.91,72,257
17248,"Lamb, domestic, shoulder, arm, separable lean and fat, trimmed to 1/8"" fat, cooked, broiled","Lamb, Veal, and Game Products",55.77,269,24.91,18.05,0.00,0.0,,1.33,78,314
17267,"Game meat, bison, top sirloin, separable lean only, trimmed to 0"" fat, raw","Lamb, Veal, and Game Products",74.40,113,21.40,2.40,0.00,,,1.20,51,335
17268,"Game meat, bison, ribeye, separable lean only, trimmed to 0"" fat, raw","Lamb, Veal, and Game Products",74.00,116,22.10,2.40,0.00,,,1.20,48,344
17269,"Game meat, bison, shoulder clod, separable lean only, trimmed to 0"" fat, raw","Lamb, Veal, and Game Products",75.40,109,21.10,2.10,0.00,,,1.20,59,322
17271,"Veal, breast, whole, boneless, separable lean and fat, raw","Lamb, Veal, and Game Products",67.67,208,17.47,14.75,0.00,,,0.90,71,286
17272,"Veal, breast, whole, boneless, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",55.95,266,26.97,16.77,0.00,,,0.89,65,272
17273,"Veal, breast, plate half, boneless, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",54.77,282,25.93,18.95,0.00,,,0.86,64,266
17274,"Veal, breast, point half, boneless, separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",57.36,248,28.23,14.16,0.00,,,0.92,66,278
17275,"Veal, breast, whole, boneless, separable lean only, cooked, braised","Lamb, Veal, and Game Products",59.72,218,30.32,9.80,0.00,,,0.97,68,289
17276,"Veal, shank (fore and hind), separable lean and fat, raw","Lamb, Veal, and Game Products",76.92,113,19.15,3.48,0.00,,,1.04,84,314
17277,"Veal, shank (fore and hind), separable lean and fat, cooked, braised","Lamb, Veal, and Game Products",61.74,191,31.54,6.20,0.00,,,1.12,93,305
17278,"Veal, shank (fore and hind), separable lean only, raw","Lamb, Veal, and Game Products",77.45,108,19.28,2.83,0.00,,,1.05,85,316
17279,"Veal, shank (fore and hind), separable lean only, cooked, braised","Lamb, Veal, and Game Products",62.98,177,32.22,4.33,0.00,0.0,,1.13,94,309
17330,"Game meat , bison, ground, raw","Lamb, Veal, and Game Products",64.25,223,18.67,15.93,0.00,0.0,0.00,0.88,66,307
17331,"Game meat, bison, ground, cooked, pan-broiled","Lamb, Veal, and Game Products",59.53,238,23.77,15.13,0.00,0.0,0.00,1.02,73,341
17332,"Game meat , bison, top sirloin, separable lean only, 1"" steak, cooked, broiled","Lamb, Veal, and Game Products",65.10,171,28.05,5.65,0.00,0.0,0.00,1.17,53,387
17333,"Game meat, bison, chuck, shoulder clod, separable lean only, 3-5 lb roast, cooked, braised","Lamb, Veal, and Game Products",60.48,193,33.78,5.43,0.00,0.0,0.00,1.08,57,316
17334,"Game meat, bison, chuck, shoulder clod, separable lean only, 3-5 lb roast, raw","Lamb, Veal, and Game Products",75.50,119,21.12,3.15,0.00,0.0,0.00,0.98,62,353
17335,"Game meat, bison, ribeye, separable lean only, 1"" steak, cooked, broiled","Lamb, Veal, and Game Products",64.48,177,29.45,5.67,0.00,0.0,0.00,1.02,52,371
17336,"Game meat, bison, top round, separable lean only, 1"" steak, cooked, broiled","Lamb, Veal, and Game Products",65.08,174,30.18,4.96,0.00,0.0,0.00,1.20,41,382
17337,"Game meat, bison, top round, separable lean only, 1"" steak, raw","Lamb, Veal, and Game Products",73.95,122,23.32,2.43,0.00,0.0,0.00,1.18,47,390
17338,"Game meat, elk, ground, raw","Lamb, Veal, and Game Products",68.84,172,21.76,8.82,0.00,0.0,0.00,1.04,79,322
17339,"Game meat, elk, ground, cooked, pan-broiled","Lamb, Veal, and Game Products",64.14,193,26.64,8.74,0.00,0.0,0.00,1.04,85,354
17340,"Game meat, elk, loin, separable lean only, cooked, broiled","Lamb, Veal, and Game Products",64.50,167,31.00,3.84,0.00,0.0,0.00,1.14,54,404
17341,"Game meat, elk, round, separable lean only, cooked, broiled","Lamb, Veal, and Game Products",65.43,156,30.94,2.64,0.00,0.0,0.00,1.28,51,392
17342,"Game meat, elk, tenderloin, separable lean only, cooked, broiled","Lamb, Veal, and Game Products",64.93,162,30.76,3.41,0.00,0.0,0.00,1.34,50,392
17343,"Game meat, deer, ground, raw","Lamb, Veal, and Game Products",71.15,157,21.78,7.13,0.00,0.0,0.00,0.88,75,330
17344,"Game meat, deer, ground, cooked, pan-broiled","Lamb, Veal, and Game Products",64.23,187,26.45,8.22,0.00,0.0,0.00,1.07,78,364
17345,"Game meat, deer, loin, separable lean only, 1"" steak, cooked, broiled","Lamb, Veal, and Game Products",67.07,150,30.20,2.38,0.00,0.0,0.00,1.25,57,398
17346,"Game meat, deer, shoulder clod, separable lean only, 3-5 lb roast, cooked, braised","Lamb, Veal, and Game Products",59.78,191,36.28,3.95,0.00,0.0,0.00,1.12,52,313
17347,"Game meat, deer, tenderloin, separable lean only, 0.5-1 lb roast, cooked, broiled","Lamb, Veal, and Game Products",67.20,149,29.90,2.35,0.00,0.0,0.00,1.27,57,434
17348,"Game meat, deer, top round, separable lean only, 1"" steak, cooked, broiled","Lamb, Veal, and Game Products",66.10,152,31.47,1.92,0.00,0.0,0.00,1.20,45,377
18001,"Bagels, plain, enriched, with calcium propionate (includes onion, poppy, sesame)",Baked Products,36.28,257,10.02,1.62,50.50,2.2,5.05,1.57,477,75
18002,"Bagels, plain, toasted, enriched, with calcium propionate (includes onion, poppy, sesame)",Baked Products,28.27,288,11.14,1.72,57.11,2.6,5.82,1.76,537,85
18003,"Bagels, egg",Baked Products,32.70,278,10.60,2.10,53.00,2.3,,1.60,505,68
18005,"Bagels, cinnamon-raisin",Baked Products,32.00,274,9.80,1.70,55.20,2.3,5.98,1.30,344,148
18006,"Bagels, cinnamon-raisin, toasted",Baked Products,26.90,294,10.60,1.80,59.30,2.5,6.43,1.40,370,163
18007,"Bagels, oat bran",Baked Products,32.90,255,10.70,1.20,53.30,3.6,1.63,1.90,590,115
18009,"Biscuits, plain or buttermilk, frozen, baked",Baked Products,26.70,338,6.20,11.03,53.87,1.3,3.48,2.20,942,224
18010,"Biscuits, plain or buttermilk, dry mix",Baked Products,9.20,428,8.00,15.40,63.40,2.1,11.65,4.00,1276,163
18011,"Biscuits, plain or buttermilk, dry mix, prepared",Baked Products,28.90,335,7.30,12.10,48.40,1.8,,3.30,955,188
18012,"Biscuits, plain or buttermilk, refrigerated dough, lower fat",Baked Products,37.76,270,6.70,7.83,43.70,2.0,7.18,4.02,876,159
18013,"Biscuits, plain or buttermilk, refrigerated dough, lower fat, baked",Baked Products,27.70,299,7.80,5.20,55.40,1.9,8.14,3.80,1018,185
18014,"Biscuits, plain or buttermilk, refrigerated dough, higher fat",Baked Products,33.15,307,6.66,10.58,46.32,0.7,7.40,3.30,977,162
18015,"Biscuits, plain or buttermilk, refrigerated dough, higher fat, baked",Baked Products,27.33,326,7.38,9.83,51.88,0.9,8.02,3.57,1062,177
18016,"Biscuits, plain or buttermilk, prepared from recipe",Baked Products,28.90,353,7.00,16.30,44.60,1.5,2.18,3.20,580,121
18017,"Biscuits, mixed grain, refrigerated dough",Baked Products,37.80,263,6.10,5.60,47.40,,,3.10,670,456
18019,"Bread, banana, prepared from recipe, made with margarine",Baked Products,29.20,326,4.30,10.50,54.60,1.1,,1.00,302,134
18021,"Bread, boston brown, canned",Baked Products,47.20,195,5.20,1.50,43.30,4.7,2.42,2.80,631,318
18022,"Bread, cornbread, dry mix, enriched (includes corn muffin mix)",Baked Products,7.80,418,7.00,12.20,69.50,6.5,20.34,3.60,817,113
18023,"Bread, cornbread, dry mix, prepared with 2% milk, 80% margarine, and eggs",Baked Products,27.12,330,6.60,9.58,54.45,2.3,16.02,2.25,599,133
18024,"Bread, cornbread, prepared from recipe, made with low fat (2%) milk",Baked Products,39.10,266,6.70,7.10,43.50,,,3.60,658,147
18025,"Bread, cracked-wheat",Baked Products,35.80,260,8.70,3.90,49.50,5.5,,2.10,538,177
18027,"Bread, egg",Baked Products,34.70,287,9.50,6.00,47.80,2.3,1.78,1.80,380,115
18028,"Bread, egg, toasted",Baked Products,28.30,315,10.50,6.60,52.60,2.5,1.94,2.00,417,126
18029,"Bread, french or vienna (includes sourdough)",Baked Products,27.81,289,11.75,1.83,56.44,2.4,2.56,2.18,513,128
18030,"Bread, french or vienna, toasted (includes sourdough)",Baked Products,20.61,319,13.00,2.14,61.93,3.1,3.59,2.31,720,140
18032,"Bread, irish soda, prepared from recipe",Baked Products,30.10,290,6.60,5.00,56.00,2.6,,1.90,398,266
18033,"Bread, italian",Baked Products,35.70,271,8.80,3.50,50.00,2.7,0.83,1.90,613,110
18035,"Bread, Multi-Grain (includes whole-grain)",Baked Products,36.94,265,13.36,4.23,43.34,7.4,6.39,2.13,381,230
18036,"Bread, Multi-Grain, toasted (includes whole-grain)",Baked Products,31.46,288,14.52,4.60,47.11,8.1,6.94,2.32,414,250
18037,"Bread, oat bran",Baked Products,44.00,236,10.40,4.40,39.80,4.5,7.70,1.50,353,147
18038,"Bread, oat bran, toasted",Baked Products,38.50,259,11.40,4.80,43.70,4.9,8.46,1.60,387,123
18039,"Bread, oatmeal",Baked Products,36.70,269,8.40,4.40,48.50,4.0,8.14,2.00,447,142
18040,"Bread, oatmeal, toasted",Baked Products,31.20,292,9.20,4.80,52.70,4.3,8.84,2.10,486,154
18041,"Bread, pita, white, enriched",Baked Products,32.10,275,9.10,1.20,55.70,2.2,1.30,1.90,536,120
18042,"Bread, pita, whole-wheat",Baked Products,30.60,266,9.80,2.60,55.00,7.4,0.82,2.00,444,170
18043,"Bread, protein (includes gluten)",Baked Products,40.00,245,12.10,2.20,43.80,3.0,1.44,1.90,404,322
18044,"Bread, pumpernickel",Baked Products,37.90,250,8.70,3.10,47.50,6.5,0.53,2.60,596,208
18045,"Bread, pumpernickel, toasted",Baked Products,31.80,275,9.50,3.40,52.20,7.1,0.58,2.80,655,228
18047,"Bread, raisin, enriched",Baked Products,33.60,274,7.90,4.40,52.30,4.3,5.68,1.80,347,227
18048,"Bread, raisin, toasted, enriched",Baked Products,27.80,297,8.60,4.80,56.90,4.7,6.18,1.90,377,246
18059,"Bread, rice bran",Baked Products,41.00,243,8.90,4.60,43.50,4.9,4.67,2.00,269,215
18060,"Bread, rye",Baked Products,37.30,259,8.50,3.30,48.30,5.8,3.85,2.50,603,166
18061,"Bread, rye, toasted",Baked Products,31.00,284,9.40,3.60,53.10,6.4,4.23,2.70,664,183
18064,"Bread, wheat",Baked Products,34.53,270,10.37,3.44,49.46,4.2,6.08,2.19,519,182
18065,"Bread, wheat, toasted",Baked Products,24.23,313,12.96,4.27,55.77,4.7,6.42,2.77,601,223
18066,"Bread, wheat bran",Baked Products,37.80,248,8.80,3.40,47.80,4.0,9.68,2.20,486,227
18068,"Bread, wheat germ",Baked Products,37.10,261,9.60,2.90,48.30,2.1,3.73,2.10,553,254
18069,"Bread, white, commercially prepared (includes soft bread crumbs)",Baked Products,36.34,265,9.15,3.19,49.06,2.7,5.07,2.26,491,115
18070,"Bread, white, commercially prepared, toasted",Baked Products,30.40,293,9.00,4.00,54.40,2.5,4.74,2.10,592,131
18071,"Bread, white, prepared from recipe, made with nonfat dry milk",Baked Products,34.80,274,7.70,2.60,53.60,2.0,,1.40,336,111
18073,"Bread, white, prepared from recipe, made with low fat (2%) milk",Baked Products,35.30,285,7.90,5.70,49.60,2.0,,1.50,359,146
18075,"Bread, whole-wheat, commercially prepared",Baked Products,39.01,252,12.45,3.50,42.71,6.0,4.34,2.32,455,254
18076,"Bread, whole-wheat, commercially prepared, toasted",Baked Products,24.25,306,16.27,4.07,51.16,9.2,5.77,4.25,493,326
18077,"Bread, whole-wheat, prepared from recipe",Baked Products,32.70,278,8.40,5.40,51.40,6.0,3.84,2.00,346,314
18078,"Bread, whole-wheat, prepared from recipe, toasted",Baked Products,26.00,305,9.20,5.90,56.40,6.7,4.22,2.20,381,345
18079,"Bread crumbs, dry, grated, plain",Baked Products,6.51,395,13.35,5.30,71.98,4.5,6.20,2.87,732,196
18080,"Bread sticks, plain",Baked Products,6.10,412,12.00,9.50,68.40,3.0,1.26,3.90,713,124
18081,"Bread stuffing, bread, dry mix",Baked Products,4.20,386,11.00,3.40,76.20,3.2,8.27,5.20,1405,246
18082,"Bread stuffing, bread, dry mix, prepared",Baked Products,64.80,177,3.20,8.60,21.70,2.9,2.11,1.70,479,74
18084,"Bread stuffing, cornbread, dry mix",Baked Products,4.60,389,10.00,4.20,76.70,14.3,4.77,4.40,1283,204
18085,"Bread stuffing, cornbread, dry mix, prepared",Baked Products,64.90,179,2.90,8.80,21.90,2.9,3.92,1.50,455,62
18155,"Cookies, butter, commercially prepared, enriched",Baked Products,4.60,467,6.10,18.80,68.90,0.8,20.24,1.50,282,111
18172,"Cookies, gingersnaps",Baked Products,5.30,416,5.60,9.80,76.90,2.2,19.92,2.40,501,346
18173,"Cookies, graham crackers, plain or honey (includes cinnamon)",Baked Products,4.40,423,6.90,10.10,76.80,2.8,31.10,1.80,477,135
18174,"Cookies, graham crackers, chocolate-coated",Baked Products,2.00,500,4.00,25.80,66.78,2.2,37.30,1.42,265,267
18175,"Cookies, ladyfingers, with lemon juice and rind",Baked Products,19.50,365,10.60,9.10,59.70,1.0,25.39,1.10,147,113
18178,"Cookies, oatmeal, commercially prepared, regular",Baked Products,5.70,450,6.20,18.10,68.70,2.8,24.66,1.40,383,142
18185,"Cookies, peanut butter, commercially prepared, regular",Baked Products,6.10,477,9.60,23.60,58.90,1.8,31.83,1.80,506,167
18186,"Cookies, peanut butter, commercially prepared, soft-type",Baked Products,11.50,457,5.30,24.40,57.70,1.7,,1.10,336,107
18192,"Cookies, shortbread, commercially prepared, plain",Baked Products,3.70,502,6.10,24.10,64.50,1.8,15.06,1.50,524,100
18193,"Cookies, shortbread, commercially prepared, pecan",Baked Products,3.30,542,4.90,32.50,58.30,1.8,,1.00,281,73
18211,"Puff pastry, frozen, ready-to-bake, baked",Baked Products,7.40,558,7.40,38.50,45.70,1.5,0.75,1.00,253,62
18214,"Crackers, cheese, regular",Baked Products,3.55,489,10.93,22.74,59.42,2.3,4.53,3.36,973,156
18215,"Crackers, cheese, sandwich-type with peanut butter filling",Baked Products,3.28,496,12.41,25.12,56.74,3.4,6.98,2.46,829,218
18216,"Crackers, crispbread, rye",Baked Products,6.10,366,7.90,1.30,82.20,16.5,1.07,2.40,410,319
18217,"Crackers, matzo, plain",Baked Products,4.30,395,10.00,1.40,83.70,3.0,0.29,0.60,0,112
18218,"Crackers, matzo, egg",Baked Products,6.40,391,12.30,2.10,78.60,2.8,,0.60,21,150
18219,"Crackers, matzo, whole-wheat",Baked Products,4.80,351,13.10,1.50,78.90,11.8,,1.60,2,316
18220,"Crackers, melba toast, plain",Baked Products,5.10,390,12.10,3.20,76.60,6.3,0.94,3.00,598,202
18221,"Crackers, melba toast, rye (includes pumpernickel)",Baked Products,4.90,389,11.60,3.40,77.30,8.0,,2.90,899,193
18222,"Crackers, melba toast, wheat",Baked Products,5.50,374,12.90,2.30,76.40,7.4,,2.90,837,148
18223,"Crackers, milk",Baked Products,4.70,455,7.60,15.80,69.70,1.9,16.44,2.20,592,114
18224,"Crackers, rusk toast",Baked Products,5.50,407,13.50,7.20,72.30,,,1.20,253,245
18225,"Crackers, rye, sandwich-type with cheese filling",Baked Products,3.80,481,9.20,22.30,60.80,3.6,,3.90,1044,342
18226,"Crackers, rye, wafers, plain",Baked Products,5.00,334,9.60,0.90,80.40,22.9,1.01,4.10,557,495
18227,"Crackers, rye, wafers, seasoned",Baked Products,4.00,381,9.00,9.20,73.80,20.9,,4.00,887,454
18228,"Crackers, saltines (includes oyster, soda, soup)",Baked Products,5.04,418,9.45,8.66,74.05,2.8,1.25,2.80,943,153
18229,"Crackers, standard snack-type, regular",Baked Products,2.91,510,6.75,26.39,61.46,2.3,8.46,2.49,705,118
18230,"Crackers, standard snack-type, sandwich, with cheese filling",Baked Products,3.90,477,9.30,21.10,61.70,1.9,3.18,4.00,978,429
18231,"Crackers, standard snack-type, sandwich, with peanut butter filling",Baked Products,2.93,494,11.47,24.54,58.38,2.3,10.50,2.68,801,215
18232,"Crackers, wheat, regular",Baked Products,3.18,456,8.95,17.36,67.35,3.7,13.80,3.15,787,207
18233,"Crackers, wheat, sandwich, with cheese filling",Baked Products,3.20,497,9.80,25.00,58.20,3.1,,3.80,839,306
18234,"Crackers, wheat, sandwich, with peanut butter filling",Baked Products,3.40,495,13.50,26.70,53.80,4.4,,2.60,807,297
18235,"Crackers, whole-wheat",Baked Products,2.94,427,10.58,14.13,69.55,10.3,1.19,2.80,704,345
18236,Cracker meal,Baked Products,7.60,383,9.30,1.70,80.90,2.6,0.33,0.60,16,115
18239,"Croissants, butter",Baked Products,23.20,406,8.20,21.00,45.80,2.6,11.26,1.60,467,118
18240,"Croissants, apple",Baked Products,45.60,254,7.40,8.70,37.10,2.5,,1.20,274,90
18241,"Croissants, cheese",Baked Products,21.00,414,9.20,20.90,47.00,2.6,11.35,1.90,361,132
18242,"Croutons, plain",Baked Products,5.50,407,11.90,6.60,73.50,5.1,,2.50,698,124
18243,"Croutons, seasoned",Baked Products,3.60,465,10.80,18.30,63.50,5.0,4.41,3.80,1089,181
18258,"English muffins, plain, enriched, with ca prop (includes sourdough)",Baked Products,43.56,227,8.87,1.69,44.17,3.5,3.53,1.71,425,109
18259,"English muffins, plain, toasted, enriched, with calcium propionate (includes sourdough)",Baked Products,32.97,270,10.32,2.02,52.65,2.8,3.47,2.04,477,129
18260,"English muffins, mixed-grain (includes granola)",Baked Products,40.20,235,9.10,1.80,46.30,2.8,0.81,2.50,298,156
18261,"English muffins, mixed-grain, toasted (includes granola)",Baked Products,35.00,255,9.90,1.90,50.30,3.0,0.88,2.70,324,169
18262,"English muffins, raisin-cinnamon (includes apple-cinnamon)",Baked Products,40.60,240,7.91,1.80,48.10,2.6,14.76,1.58,299,173
18263,"English muffins, raisin-cinnamon, toasted (includes apple-cinnamon)",Baked Products,32.07,276,8.87,2.21,55.04,3.0,13.34,1.81,342,194
18264,"English muffins, wheat",Baked Products,42.30,223,8.70,2.00,44.80,4.6,1.56,2.30,353,186
18265,"English muffins, wheat, toasted",Baked Products,37.20,243,9.40,2.10,48.70,5.0,1.70,2.50,384,202
18266,"English muffins, whole-wheat",Baked Products,45.70,203,8.80,2.10,40.40,6.7,8.09,2.80,364,210
18267,"English muffins, whole-wheat, toasted",Baked Products,41.00,221,9.60,2.30,44.10,7.3,8.79,3.00,396,228
18270,"Hush puppies, prepared from recipe",Baked Products,29.00,337,7.70,13.50,46.00,2.8,2.03,3.90,668,144
18289,"Pancakes, plain, dry mix, complete (includes buttermilk)",Baked Products,9.05,368,9.77,3.10,73.65,2.9,16.03,4.44,1082,191
18290,"Pancakes, plain, dry mix, complete, prepared",Baked Products,53.00,194,5.20,2.50,36.70,1.3,,2.60,628,175
18291,"Pancakes, plain, dry mix, incomplete (includes buttermilk)",Baked Products,9.10,355,10.00,1.70,73.60,5.4,2.21,5.60,1496,191
18292,"Pancakes, plain, dry mix, incomplete, prepared",Baked Products,52.90,218,7.80,7.70,28.90,1.9,,2.60,505,199
18330,"Pie crust, cookie-type, prepared from recipe, graham cracker, baked",Baked Products,4.20,494,4.20,24.90,65.20,1.5,38.34,1.50,571,88
18332,"Pie crust, standard-type, dry mix",Baked Products,7.60,518,6.90,31.40,52.10,,,2.00,753,64
18333,"Pie crust, standard-type, dry mix, prepared, baked",Baked Products,10.60,501,6.70,30.40,50.40,1.8,,2.00,729,62
18334,"Pie crust, standard-type, frozen, ready-to-bake, enriched",Baked Products,17.82,457,6.16,26.07,48.62,2.5,,1.33,409,97
18335,"Pie crust, standard-type, frozen, ready-to-bake, enriched, baked",Baked Products,7.18,508,6.50,28.59,56.24,3.3,4.23,1.49,467,114
18336,"Pie crust, standard-type, prepared from recipe, baked",Baked Products,9.80,527,6.40,34.60,47.50,1.7,0.17,1.70,542,67
18337,"Puff pastry, frozen, ready-to-bake",Baked Products,8.50,551,7.30,38.10,45.10,1.5,0.74,1.00,249,61
18338,Phyllo dough,Baked Products,32.60,299,7.10,6.00,52.60,1.9,0.18,1.60,483,74
18339,"Popovers, dry mix, enriched",Baked Products,11.70,371,10.40,4.30,71.00,,,2.60,906,100
18342,"Rolls, dinner, plain, commercially prepared (includes brown-and-serve)",Baked Products,28.44,310,10.86,6.47,52.04,2.0,5.55,2.18,467,139
18344,"Rolls, dinner, egg",Baked Products,30.40,307,9.50,6.40,52.00,3.7,4.30,1.70,566,104
18345,"Rolls, dinner, oat bran",Baked Products,44.00,236,9.50,4.60,40.20,4.1,6.67,1.70,413,121
18346,"Rolls, dinner, rye",Baked Products,30.10,286,10.30,3.40,53.10,4.9,1.17,2.90,650,180
18347,"Rolls, dinner, wheat",Baked Products,37.00,273,8.60,6.30,46.00,3.8,1.63,2.10,524,115
18348,"Rolls, dinner, whole-wheat",Baked Products,33.10,266,8.70,4.70,51.10,7.5,8.46,2.30,521,272
18349,"Rolls, french",Baked Products,34.80,277,8.60,4.30,50.20,3.2,0.31,1.90,574,114
18350,"Rolls, hamburger or hotdog, plain",Baked Products,34.18,278,9.87,3.76,50.15,2.1,6.37,2.06,500,127
18351,"Rolls, hamburger or hotdog, mixed-grain",Baked Products,38.00,263,9.60,6.00,44.60,3.8,6.25,1.80,458,160
18353,"Rolls, hard (includes kaiser)",Baked Products,31.00,293,9.90,4.30,52.70,2.3,1.77,2.00,544,108
18360,"Taco shells, baked",Baked Products,6.48,474,6.48,21.30,64.03,7.0,1.54,1.72,243,233
18363,"Tortillas, ready-to-bake or -fry, corn",Baked Products,45.89,218,5.70,2.85,44.64,6.3,0.88,0.93,45,186
18364,"Tortillas, ready-to-bake or -fry, flour, refrigerated",Baked Products,31.58,301,8.00,6.70,51.21,2.3,4.39,2.50,686,153
18368,Wonton wrappers (includes egg roll wrappers),Baked Products,28.80,291,9.80,1.50,57.90,1.8,,1.90,572,82
18369,"Leavening agents, baking powder, double-acting, sodium aluminum sulfate",Baked Products,5.00,53,0.00,0.00,27.70,0.2,0.00,67.30,10600,20
18370,"Leavening agents, baking powder, double-acting, straight phosphate",Baked Products,4.00,51,0.10,0.00,24.10,0.2,0.00,71.80,7893,5
18372,"Leavening agents, baking soda",Baked Products,0.20,0,0.00,0.00,0.00,0.0,0.00,36.90,27360,0
18373,"Leavening agents, cream of tartar",Baked Products,1.70,258,0.00,0.00,61.50,0.2,0.00,36.80,52,16500
18374,"Leavening agents, yeast, baker's, compressed",Baked Products,69.00,105,8.40,1.90,18.10,8.1,0.00,1.80,30,601
18375,"Leavening agents, yeast, baker's, active dry",Baked Products,5.08,325,40.44,7.61,41.22,26.9,0.00,5.65,51,955
18376,"Bread crumbs, dry, grated, seasoned",Baked Products,6.35,383,14.13,5.48,68.49,4.9,5.74,5.55,1336,231
18383,"Bread, protein, toasted (includes gluten)",Baked Products,34.00,270,13.20,2.40,48.10,3.3,1.44,2.10,444,346
18384,"Bread, rice bran, toasted",Baked Products,35.90,264,9.70,5.00,47.30,5.3,5.08,2.20,292,212
18385,"Bread, wheat germ, toasted",Baked Products,29.30,293,10.70,3.30,54.30,2.3,4.14,2.40,621,285
18396,"Rolls, dinner, plain, prepared from recipe, made with low fat (2%) milk",Baked Products,29.10,316,8.50,7.30,53.40,1.9,,1.70,415,152
18398,"Pie crust, cookie-type, prepared from recipe, chocolate wafer, chilled",Baked Products,7.30,506,5.10,31.10,54.40,1.5,22.10,2.00,672,168
18399,"Pie crust, cookie-type, prepared from recipe, graham cracker, chilled",Baked Products,6.10,484,4.10,24.40,63.90,1.5,37.57,1.50,560,86
18400,"Crackers, matzo, egg and onion",Baked Products,7.20,391,10.00,3.90,77.10,5.0,,1.80,285,83
18401,"Pie crust, cookie-type, prepared from recipe, vanilla wafer, chilled",Baked Products,8.50,531,3.70,36.20,50.20,0.1,7.33,1.40,515,79
18402,"Pie crust, standard-type, prepared from recipe, unbaked",Baked Products,19.70,469,5.70,30.80,42.30,3.4,0.15,1.50,482,59
18406,"Bagels, plain, enriched, without calcium propionate (includes onion, poppy, sesame)",Baked Products,32.60,275,10.50,1.60,53.40,2.3,,1.80,534,101
18421,"Cookies, butter, commercially prepared, unenriched",Baked Products,4.60,467,6.10,18.80,68.90,0.8,,1.50,351,111
18423,"Cookies, ladyfingers, without lemon juice and rind",Baked Products,19.50,365,10.60,9.10,59.70,1.0,,1.10,147,113
18424,"Crackers, melba toast, plain, without salt",Baked Products,5.10,390,12.10,3.20,76.60,6.3,,3.00,19,202
18425,"Crackers, saltines, low salt (includes oyster, soda, soup)",Baked Products,4.03,421,9.50,8.85,74.34,2.9,2.22,3.28,198,724
18426,"Crackers, saltines, unsalted tops (includes oyster, soda, soup)",Baked Products,4.10,434,9.20,11.80,71.50,3.0,,3.30,766,128
18427,"Crackers, standard snack-type, regular, low salt",Baked Products,3.50,502,7.40,25.30,61.00,1.6,1.79,2.80,216,355
18428,"Crackers, wheat, low salt",Baked Products,3.10,473,8.60,20.60,64.90,4.5,13.04,2.80,190,203
18429,"Crackers, whole-wheat, low salt",Baked Products,2.70,443,8.80,17.20,68.60,10.5,0.37,2.70,186,297
18437,"English muffins, plain, enriched, without calcium propionate(includes sourdough)",Baked Products,42.10,235,7.70,1.80,46.00,2.7,,2.20,464,131
18438,"English muffins, plain, unenriched, with calcium propionate (includes sourdough)",Baked Products,42.10,235,7.70,1.80,46.00,2.7,,2.20,464,131
18439,"English muffins, plain, unenriched, without calcium propionate (includes sourdough)",Baked Products,42.10,235,7.70,1.80,46.00,2.7,,2.20,464,131
18446,"Pie crust, standard-type, frozen, ready-to-bake, unenriched",Baked Products,21.00,457,3.90,29.20,44.10,0.9,,1.80,576,98
18448,"Taco shells, baked, without added salt",Baked Products,6.00,468,7.20,22.60,62.40,7.5,,1.80,15,179
18449,"Tortillas, ready-to-bake or -fry, corn, without added salt",Baked Products,44.10,222,5.70,2.50,46.60,5.2,,1.20,11,154
18450,"Tortillas, ready-to-bake or -fry, flour, without added calcium",Baked Products,26.80,325,8.70,7.10,55.60,3.3,,1.80,478,131
18459,"Breakfast tart, low fat",Baked Products,12.04,372,3.99,5.99,76.80,1.5,4.87,1.18,361,66
18927,"Crackers, cheese, sandwich-type with cheese filling",Baked Products,4.81,490,8.92,24.41,58.76,1.9,12.33,3.10,878,295
18933,"Waffle, buttermilk, frozen, ready-to-heat, toasted",Baked Products,31.57,309,7.42,9.49,48.39,2.6,4.41,3.13,710,138
18934,"Waffle, buttermilk, frozen, ready-to-heat, microwaved",Baked Products,36.48,289,6.92,9.40,44.16,2.4,4.50,3.04,663,110
18935,"Waffle, plain, frozen, ready-to-heat, microwave",Baked Products,34.95,298,6.71,9.91,45.41,2.4,5.04,3.02,682,148
18945,"Pie crust, deep dish, frozen, unbaked, made with enriched flour",Baked Products,17.78,468,5.52,28.74,46.79,1.4,,1.17,353,91
18946,"Pie crust, refrigerated, regular, baked",Baked Products,7.96,506,3.41,28.69,58.52,1.4,,1.42,472,83
18947,"Pie crust, deep dish, frozen, baked, made with enriched flour",Baked Products,8.26,521,6.10,31.84,52.47,2.3,,1.33,393,103
18948,"Pie crust, refrigerated, regular, unbaked",Baked Products,19.25,445,2.97,25.46,51.11,1.8,,1.22,409,73
18949,"Crackers, whole-wheat, reduced fat",Baked Products,2.59,416,11.34,7.59,75.52,10.9,1.22,2.96,745,373
18950,"Crackers, wheat, reduced fat",Baked Products,2.73,444,9.34,13.37,71.52,3.4,15.01,3.04,776,210
18952,"Tostada shells, corn",Baked Products,3.32,474,6.15,23.38,64.43,5.8,,2.72,657,237
18953,"Bread, salvadoran sweet cheese (quesadilla salvadorena)",Baked Products,25.48,374,7.12,17.12,47.84,0.7,24.90,2.44,510,350
18955,"Bread, pan dulce, sweet yeast bread",Baked Products,21.54,367,9.42,11.58,56.38,2.3,12.50,1.08,228,103
18963,"Garlic bread, frozen",Baked Products,31.78,350,8.36,16.61,41.72,2.5,3.69,1.54,544,103
18964,"Cinnamon buns, frosted (includes honey buns)",Baked Products,20.03,436,4.72,24.36,49.59,1.3,25.42,1.30,305,96
18965,"Crackers, cheese, reduced fat",Baked Products,7.30,418,10.00,11.67,68.19,3.3,0.00,2.84,1167,141
18966,"Crackers, saltines, whole wheat (includes multi-grain)",Baked Products,9.85,398,7.14,10.71,68.25,0.0,0.00,4.04,1214,221
18967,"Bread, wheat, white wheat",Baked Products,39.60,238,10.66,2.15,43.91,9.2,5.00,3.69,478,127
18968,"Bagel, wheat",Baked Products,37.55,250,10.20,1.53,48.89,4.1,6.12,1.82,439,165
18970,"Tortillas, ready-to-bake or -fry, flour, shelf stable",Baked Products,32.43,297,8.01,7.58,49.27,2.4,2.66,2.71,742,133
18971,"Bread, potato",Baked Products,33.55,266,12.50,3.13,47.07,6.3,12.50,3.76,375,718
18972,"Bread, cheese",Baked Products,21.13,408,10.42,20.83,44.83,2.1,2.08,2.79,750,84
18973,"Focaccia, Italian flatbread, plain",Baked Products,45.91,249,8.77,7.89,35.82,1.8,1.75,1.60,561,114
19013,"Snacks, fruit leather, pieces",Sweets,12.30,359,1.00,2.68,82.82,0.0,57.58,1.20,403,164
19014,"Snacks, fruit leather, rolls",Sweets,10.20,371,0.10,3.00,85.80,0.0,49.16,0.90,317,294
19070,"Candies, butterscotch",Sweets,5.25,391,0.03,3.30,90.40,0.0,80.46,1.01,391,3
19071,"Candies, carob, unsweetened",Sweets,1.54,540,8.15,31.36,56.29,3.8,34.11,2.66,107,633
19074,"Candies, caramels",Sweets,8.50,382,4.60,8.10,77.00,0.0,65.50,1.80,245,214
19076,"Candies, caramels, chocolate-flavor roll",Sweets,6.69,387,1.59,3.31,87.73,0.1,56.32,0.68,44,116
19077,"Baking chocolate, unsweetened, liquid",Sweets,0.90,472,12.10,47.70,36.20,18.1,0.00,3.10,12,1166
19078,"Baking chocolate, unsweetened, squares",Sweets,1.34,501,12.90,52.31,29.84,16.6,0.91,3.60,24,830
19079,"Candies, confectioner's coating, yogurt",Sweets,1.91,522,5.87,27.00,63.94,0.0,62.36,1.28,88,290
19080,"Candies, semisweet chocolate",Sweets,0.70,480,4.20,30.00,63.90,5.9,54.50,1.20,11,365
19081,"Candies, sweet chocolate",Sweets,0.50,507,3.90,34.20,60.40,5.5,51.48,1.00,16,290
19083,"Candies, sweet chocolate coated fondant",Sweets,7.70,366,2.20,9.30,80.40,2.1,71.42,0.40,26,168
19085,"Candies, confectioner's coating, butterscotch",Sweets,0.75,539,2.20,29.05,67.10,0.0,67.10,0.90,89,64
19086,"Candies, confectioner's coating, peanut butter",Sweets,2.67,529,18.30,29.80,46.88,5.0,38.30,2.35,250,505
19087,"Candies, white chocolate",Sweets,1.30,539,5.87,32.09,59.24,0.2,59.00,1.50,90,286
19095,"Ice creams, vanilla",Sweets,61.00,207,3.50,11.00,23.60,0.7,21.22,0.90,80,199
19097,"Sherbet, orange",Sweets,66.10,144,1.10,2.00,30.40,1.3,24.32,0.40,46,96
19099,"Candies, fondant, prepared-from-recipe",Sweets,6.74,373,0.00,0.02,93.18,0.0,88.90,0.06,11,4
19106,"Candies, gumdrops, starch jelly pieces",Sweets,1.00,396,0.00,0.00,98.90,0.1,58.97,0.10,44,5
19107,"Candies, hard",Sweets,1.30,394,0.00,0.20,98.00,0.0,62.90,0.50,38,5
19108,"Candies, jellybeans",Sweets,6.30,375,0.00,0.05,93.55,0.2,70.00,0.10,50,37
19113,"Syrups, table blends, pancake, with butter",Sweets,24.00,296,0.00,1.60,74.10,0.0,,0.20,98,3
19116,"Candies, marshmallows",Sweets,16.40,318,1.80,0.20,81.30,0.1,57.56,0.30,80,5
19117,"Candies, halavah, plain",Sweets,3.67,469,12.49,21.52,60.49,4.5,,1.83,195,187
19120,"Candies, milk chocolate",Sweets,1.50,535,7.65,29.66,59.40,3.4,51.50,1.78,79,372
19124,"Baking chocolate, mexican, squares",Sweets,1.59,426,3.64,15.59,77.41,4.0,69.40,1.34,3,397
19125,Chocolate-flavored hazelnut spread,Sweets,1.07,541,5.41,29.73,62.16,5.4,54.05,1.44,41,407
19126,"Candies, milk chocolate coated peanuts",Sweets,1.90,519,13.10,33.50,49.70,4.7,37.59,1.80,41,502
19127,"Candies, milk chocolate coated raisins",Sweets,11.20,390,4.10,14.80,68.40,3.1,62.22,1.50,36,514
19128,"Syrups, table blends, pancake, reduced-calorie",Sweets,54.90,165,0.00,0.00,44.55,0.0,32.80,0.55,178,3
19129,"Syrups, table blends, pancake",Sweets,37.98,234,0.00,0.00,61.47,0.0,21.47,0.20,82,15
19132,"Candies, milk chocolate, with almonds",Sweets,1.50,526,9.00,34.40,53.40,6.2,43.90,1.70,74,444
19134,"Candies, milk chocolate, with rice cereal",Sweets,1.52,511,7.64,29.37,59.67,3.3,51.06,1.78,86,370
19138,"Candies, truffles, prepared-from-recipe",Sweets,13.47,510,6.21,33.76,44.88,2.5,38.31,1.44,68,297
19147,"Candies, peanut bar",Sweets,1.60,522,15.50,33.70,47.40,4.1,42.22,1.90,156,407
19148,"Candies, peanut brittle, prepared-from-recipe",Sweets,0.70,486,7.57,18.98,71.24,2.5,51.33,1.51,445,168
19154,"Candies, sesame crunch",Sweets,2.20,516,11.60,33.30,50.30,7.7,31.17,2.60,167,307
19165,"Cocoa, dry powder, unsweetened",Sweets,3.00,228,19.60,13.70,57.90,33.2,1.75,5.80,21,1524
19166,"Cocoa, dry powder, unsweetened, processed with alkali",Sweets,2.70,220,18.10,13.10,58.30,29.8,1.76,7.80,19,2509
19177,"Gelatins, dry powder, unsweetened",Sweets,13.00,335,85.60,0.10,0.00,0.0,0.00,1.30,196,16
19216,"Candies, praline, prepared-from-recipe",Sweets,10.36,485,3.30,25.90,59.59,3.5,55.79,0.85,48,217
19268,"Candies, dark chocolate coated coffee beans",Sweets,1.47,540,7.50,30.00,59.95,7.5,42.50,1.08,25,342
19270,"Ice creams, chocolate",Sweets,55.70,216,3.80,11.00,28.20,1.2,25.36,1.00,76,249
19279,"Candies, milk chocolate coated coffee beans",Sweets,2.42,549,7.41,33.18,55.25,5.7,50.75,1.75,70,413
19294,"Fruit butters, apple",Sweets,56.45,173,0.39,0.30,42.47,1.5,35.30,0.39,15,91
19296,Honey,Sweets,17.10,304,0.30,0.00,82.40,0.2,82.12,0.20,4,52
19297,Jams and preserves,Sweets,30.47,278,0.37,0.07,68.86,1.1,48.50,0.23,32,77
19300,Jellies,Sweets,29.77,266,0.15,0.02,69.95,1.0,51.22,0.12,30,54
19303,"Marmalade, orange",Sweets,33.20,246,0.30,0.00,66.30,0.7,60.00,0.20,56,37
19304,Molasses,Sweets,21.87,290,0.00,0.10,74.73,0.0,74.72,3.30,37,1464
19310,"Pectin, unsweetened, dry mix",Sweets,8.70,325,0.30,0.30,90.40,8.6,,0.30,200,7
19312,"Pie fillings, apple, canned",Sweets,73.40,100,0.10,0.10,26.10,1.0,13.80,0.30,47,45
19314,"Pie fillings, canned, cherry",Sweets,71.23,115,0.37,0.07,28.00,0.6,,0.20,18,105
19334,"Sugars, brown",Sweets,1.34,380,0.12,0.00,98.09,0.0,97.02,0.45,28,133
19335,"Sugars, granulated",Sweets,0.02,387,0.00,0.00,99.98,0.0,99.80,0.01,1,2
19336,"Sugars, powdered",Sweets,0.23,389,0.00,0.00,99.77,0.0,97.81,0.01,2,2
19340,"Sugars, maple",Sweets,8.00,354,0.10,0.20,90.90,0.0,84.87,0.80,11,274
19348,"Syrups, chocolate, fudge-type",Sweets,21.80,350,4.60,8.90,62.90,2.8,34.82,1.80,346,284
19349,"Syrups, corn, dark",Sweets,22.01,286,0.00,0.00,77.59,0.0,77.59,0.40,155,44
19350,"Syrups, corn, light",Sweets,22.81,283,0.00,0.20,76.79,0.0,76.77,0.20,62,1
19351,"Syrups, corn, high-fructose",Sweets,24.00,281,0.00,0.00,76.00,0.0,75.65,0.00,2,0
19352,"Syrups, malt",Sweets,21.10,318,6.20,0.00,71.30,0.0,71.30,1.30,35,320
19353,"Syrups, maple",Sweets,32.39,260,0.04,0.06,67.04,0.0,67.90,0.47,12,212
19355,"Syrups, sorghum",Sweets,22.70,290,0.00,0.00,74.90,0.0,74.90,2.40,8,1000
19360,"Syrups, table blends, pancake, with 2% maple",Sweets,30.10,265,0.00,0.10,69.60,0.0,42.00,0.20,61,6
19361,"Syrups, table blends, cane and 15% maple",Sweets,30.10,278,0.00,0.10,69.52,0.1,68.20,0.35,104,53
19362,"Syrups, table blends, corn, refiner, and sugar",Sweets,15.60,319,0.00,0.00,83.90,0.0,,0.50,71,63
19382,"Candies, taffy, prepared-from-recipe",Sweets,4.85,397,0.03,3.33,91.56,0.0,68.48,0.18,52,3
19383,"Candies, toffee, prepared-from-recipe",Sweets,0.55,560,1.07,32.75,64.72,0.0,63.47,0.66,135,51
19384,"Candies, divinity, prepared-from-recipe",Sweets,9.16,364,1.32,0.06,89.05,0.0,78.96,0.14,34,23
19701,"Candies, semisweet chocolate, made with butter",Sweets,0.70,477,4.20,29.70,63.40,5.9,,1.20,11,365
19719,"Jams and preserves, apricot",Sweets,34.50,242,0.70,0.20,64.40,0.3,43.40,0.20,40,77
19720,"Syrups, table blends, pancake, with 2% maple, with added potassium",Sweets,30.10,265,0.00,0.10,69.60,0.0,,0.20,61,22
19858,"Candies, sugar-coated almonds",Sweets,2.30,474,10.00,17.93,68.26,2.5,62.50,1.51,13,255
19859,"Cocoa, dry powder, hi-fat or breakfast, plain",Sweets,3.00,486,16.80,23.71,51.39,29.8,1.55,5.10,20,1574
19860,"Cocoa, dry powder, hi-fat or breakfast, processed with alkali",Sweets,3.00,479,16.80,23.71,49.71,33.9,1.53,6.79,20,2509
19866,"Candies, soft fruit and nut squares",Sweets,13.88,390,2.31,9.52,73.81,2.4,45.95,0.40,131,82
19902,"Chocolate, dark, 45- 59% cacao solids",Sweets,0.97,546,4.88,31.28,61.17,7.0,47.90,1.70,24,559
19903,"Chocolate, dark, 60-69% cacao solids",Sweets,1.25,579,6.12,38.31,52.42,8.0,36.71,1.90,10,567
19904,"Chocolate, dark, 70-85% cacao solids",Sweets,1.37,598,7.79,42.63,45.90,10.9,23.99,2.32,20,715
19906,"Sweeteners, for baking, brown, contains sugar and sucralose",Sweets,2.44,388,0.00,0.00,97.11,,45.66,0.45,11,130
19907,"Sweeteners, for baking, contains sugar and sucralose",Sweets,0.43,398,0.00,0.00,99.53,,47.05,0.04,2,2
19908,"Sugar, turbinado",Sweets,0.03,399,0.00,0.00,99.80,,99.19,0.17,3,29
19909,"Sweeteners, sugar substitute, granulated, brown",Sweets,9.14,347,2.06,0.00,84.77,0.6,4.03,4.03,572,39
19910,"Candies, crispy bar with peanut butter filling",Sweets,1.60,542,9.53,31.34,55.53,3.3,40.33,2.00,264,295
19911,"Syrup, maple, Canadian",Sweets,32.15,270,0.00,0.00,67.38,0.0,59.92,0.47,9,225
19912,"Sweetener, syrup, agave",Sweets,22.94,310,0.09,0.45,76.37,0.2,68.03,0.14,4,4
19918,"Sweetener, herbal extract powder from Stevia leaf",Sweets,0.00,0,0.00,0.00,100.00,0.0,0.00,0.00,0,0
19919,"Candies, fruit snacks, with high vitamin C",Sweets,11.84,352,0.08,0.00,87.97,0.0,68.18,0.11,23,8
20001,"Amaranth, uncooked",Cereal Grains and Pasta,11.29,371,13.56,7.02,65.25,6.7,1.69,2.88,4,508
20002,"Amaranth grain, cooked",Cereal Grains and Pasta,75.16,102,3.80,1.58,18.69,2.1,,0.77,6,135
20003,Arrowroot flour,Cereal Grains and Pasta,11.37,357,0.30,0.10,88.15,3.4,,0.08,2,11
20004,"Barley, hulled",Cereal Grains and Pasta,9.44,354,12.48,2.30,73.48,17.3,0.80,2.29,12,452
20005,"Barley, pearled, raw",Cereal Grains and Pasta,10.09,352,9.91,1.16,77.72,15.6,0.80,1.11,9,280
20006,"Barley, pearled, cooked",Cereal Grains and Pasta,68.80,123,2.26,0.44,28.22,3.8,0.28,0.27,3,93
20008,Buckwheat,Cereal Grains and Pasta,9.75,343,13.25,3.40,71.50,10.0,,2.10,1,460
20009,"Buckwheat groats, roasted, dry",Cereal Grains and Pasta,8.41,346,11.73,2.71,74.95,10.3,,2.20,11,320
20010,"Buckwheat groats, roasted, cooked",Cereal Grains and Pasta,75.63,92,3.38,0.62,19.94,2.7,0.90,0.43,4,88
20011,"Buckwheat flour, whole-groat",Cereal Grains and Pasta,11.15,335,12.62,3.10,70.59,10.0,2.60,2.54,11,577
20012,"Bulgur, dry",Cereal Grains and Pasta,9.00,342,12.29,1.33,75.87,18.3,0.41,1.51,17,410
20013,"Bulgur, cooked",Cereal Grains and Pasta,77.76,83,3.08,0.24,18.58,4.5,0.10,0.34,5,68
20014,"Corn, yellow",Cereal Grains and Pasta,10.37,365,9.42,4.74,74.26,7.3,0.64,1.20,35,287
20015,"Corn bran, crude",Cereal Grains and Pasta,4.71,224,8.36,0.92,85.64,79.0,0.00,0.36,7,44
20016,"Corn flour, whole-grain, yellow",Cereal Grains and Pasta,10.91,361,6.93,3.86,76.85,7.3,0.64,1.45,5,315
20017,"Corn flour, masa, enriched, white",Cereal Grains and Pasta,9.04,365,9.28,3.86,76.29,6.4,1.61,1.52,5,263
20018,"Corn flour, degermed, unenriched, yellow",Cereal Grains and Pasta,9.81,375,5.59,1.39,82.75,1.9,0.64,0.46,1,90
20019,"Corn flour, masa, unenriched, white",Cereal Grains and Pasta,9.04,365,9.28,3.86,76.29,6.4,1.61,1.52,5,263
20020,"Cornmeal, whole-grain, yellow",Cereal Grains and Pasta,10.26,362,8.12,3.59,76.89,7.3,0.64,1.13,35,287
20022,"Cornmeal, degermed, enriched, yellow",Cereal Grains and Pasta,11.18,370,7.11,1.75,79.45,3.9,1.61,0.51,7,142
20023,"Cornmeal, self-rising, bolted, plain, enriched, yellow",Cereal Grains and Pasta,12.59,334,8.28,3.40,70.28,6.7,,5.45,1247,255
20024,"Cornmeal, self-rising, bolted, with wheat flour added, enriched, yellow",Cereal Grains and Pasta,10.33,348,8.41,2.85,73.43,6.3,,4.98,1319,207
20025,"Cornmeal, self-rising, degermed, enriched, yellow",Cereal Grains and Pasta,10.17,355,8.41,1.72,74.79,7.1,,4.91,1348,170
20027,Cornstarch,Cereal Grains and Pasta,8.32,381,0.26,0.05,91.27,0.9,0.00,0.09,9,3
20028,"Couscous, dry",Cereal Grains and Pasta,8.56,376,12.76,0.64,77.43,5.0,,0.62,10,166
20029,"Couscous, cooked",Cereal Grains and Pasta,72.57,112,3.79,0.16,23.22,1.4,0.10,0.26,5,58
20030,"Hominy, canned, white",Cereal Grains and Pasta,82.53,72,1.48,0.88,14.26,2.5,1.82,0.86,345,9
20031,"Millet, raw",Cereal Grains and Pasta,8.67,378,11.02,4.22,72.85,8.5,,3.25,5,195
20032,"Millet, cooked",Cereal Grains and Pasta,71.41,119,3.51,1.00,23.67,1.3,0.13,0.41,2,62
20033,"Oat bran, raw",Cereal Grains and Pasta,6.55,246,17.30,7.03,66.22,15.4,1.45,2.89,4,566
20034,"Oat bran, cooked",Cereal Grains and Pasta,84.00,40,3.21,0.86,11.44,2.6,,0.49,1,92
20035,"Quinoa, uncooked",Cereal Grains and Pasta,13.28,368,14.12,6.07,64.16,7.0,,2.38,5,563
20036,"Rice, brown, long-grain, raw",Cereal Grains and Pasta,10.37,370,7.94,2.92,77.24,3.5,0.85,1.53,7,223
20037,"Rice, brown, long-grain, cooked",Cereal Grains and Pasta,73.09,111,2.58,0.90,22.96,1.8,0.35,0.46,5,43
20038,Oats,Cereal Grains and Pasta,8.22,389,16.89,6.90,66.27,10.6,,1.72,2,429
20040,"Rice, brown, medium-grain, raw",Cereal Grains and Pasta,12.37,362,7.50,2.68,76.17,3.4,,1.27,4,268
20041,"Rice, brown, medium-grain, cooked",Cereal Grains and Pasta,72.96,112,2.32,0.83,23.51,1.8,,0.39,1,79
20044,"Rice, white, long-grain, regular, raw, enriched",Cereal Grains and Pasta,11.62,365,7.13,0.66,79.95,1.3,0.12,0.64,5,115
20045,"Rice, white, long-grain, regular, cooked, enriched",Cereal Grains and Pasta,68.44,130,2.69,0.28,28.17,0.4,0.05,0.41,1,35
20046,"Rice, white, long-grain, parboiled, enriched, dry",Cereal Grains and Pasta,9.86,374,7.51,1.03,80.89,1.8,0.33,0.71,2,174
20047,"Rice, white, long-grain, parboiled, enriched, cooked",Cereal Grains and Pasta,70.36,123,2.91,0.37,26.05,0.9,0.11,0.30,2,56
20048,"Rice, white, long-grain, precooked or instant, enriched, dry",Cereal Grains and Pasta,8.38,380,7.82,0.94,82.32,1.9,0.05,0.53,10,27
20049,"Rice, white, long-grain, precooked or instant, enriched, prepared",Cereal Grains and Pasta,72.00,117,2.18,0.50,25.10,0.6,0.00,0.22,4,9
20050,"Rice, white, medium-grain, raw, enriched",Cereal Grains and Pasta,12.89,360,6.61,0.58,79.34,1.4,,0.58,1,86
20051,"Rice, white, medium-grain, cooked",Cereal Grains and Pasta,68.61,130,2.38,0.21,28.59,0.3,,0.21,0,29
20052,"Rice, white, short-grain, raw",Cereal Grains and Pasta,13.29,358,6.50,0.52,79.15,2.8,,0.54,1,76
20053,"Rice, white, short-grain, cooked",Cereal Grains and Pasta,68.53,130,2.36,0.19,28.73,,,0.20,0,26
20054,"Rice, white, glutinous, raw",Cereal Grains and Pasta,10.46,370,6.81,0.55,81.68,2.8,,0.49,7,77
20055,"Rice, white, glutinous, cooked",Cereal Grains and Pasta,76.63,97,2.02,0.19,21.09,1.0,0.05,0.07,5,10
20060,"Rice bran, crude",Cereal Grains and Pasta,6.13,316,13.35,20.85,49.69,21.0,0.90,9.98,5,1485
20061,"Rice flour, white",Cereal Grains and Pasta,11.89,366,5.95,1.42,80.13,2.4,0.12,0.61,0,76
20062,Rye,Cereal Grains and Pasta,10.60,338,10.34,1.63,75.86,15.1,0.98,1.57,2,510
20063,"Rye flour, dark",Cereal Grains and Pasta,10.75,325,15.91,2.22,68.63,23.8,2.31,2.50,2,717
20064,"Rye flour, medium",Cereal Grains and Pasta,10.97,349,10.88,1.52,75.43,11.8,1.10,1.20,2,374
20065,"Rye flour, light",Cereal Grains and Pasta,11.40,357,9.82,1.33,76.68,8.0,0.93,0.78,2,224
20066,"Semolina, enriched",Cereal Grains and Pasta,12.67,360,12.68,1.05,72.83,3.9,,0.77,1,186
20067,Sorghum,Cereal Grains and Pasta,9.20,339,11.30,3.30,74.63,6.3,3.39,1.57,6,350
20068,"Tapioca, pearl, dry",Cereal Grains and Pasta,10.99,358,0.19,0.02,88.69,0.9,3.35,0.11,1,11
20069,Triticale,Cereal Grains and Pasta,10.51,336,13.05,2.09,72.13,,,2.23,5,332
20070,"Triticale flour, whole-grain",Cereal Grains and Pasta,10.01,338,13.18,1.81,73.14,14.6,,1.85,2,466
20071,"Wheat, hard red spring",Cereal Grains and Pasta,12.76,329,15.40,1.92,68.03,12.2,0.41,1.89,2,340
20072,"Wheat, hard red winter",Cereal Grains and Pasta,13.10,327,12.61,1.54,71.18,12.2,0.41,1.57,2,363
20073,"Wheat, soft red winter",Cereal Grains and Pasta,12.17,331,10.35,1.56,74.24,12.5,0.41,1.68,2,397
20074,"Wheat, hard white",Cereal Grains and Pasta,9.57,342,11.31,1.71,75.90,12.2,0.41,1.52,2,432
20075,"Wheat, soft white",Cereal Grains and Pasta,10.42,340,10.69,1.99,75.36,12.7,0.41,1.54,2,435
20076,"Wheat, durum",Cereal Grains and Pasta,10.94,339,13.68,2.47,71.13,,,1.78,2,431
20077,"Wheat bran, crude",Cereal Grains and Pasta,9.89,216,15.55,4.25,64.51,42.8,0.41,5.79,2,1182
20078,"Wheat germ, crude",Cereal Grains and Pasta,11.12,360,23.15,9.72,51.80,13.2,,4.21,12,892
20080,"Wheat flour, whole-grain",Cereal Grains and Pasta,10.74,340,13.21,2.50,71.97,10.7,0.41,1.58,2,363
20081,"Wheat flour, white, all-purpose, enriched, bleached",Cereal Grains and Pasta,11.92,364,10.33,0.98,76.31,2.7,0.27,0.47,2,107
20082,"Wheat flour, white, all-purpose, self-rising, enriched",Cereal Grains and Pasta,10.59,354,9.89,0.97,74.22,2.7,0.22,4.33,1193,124
20083,"Wheat flour, white, bread, enriched",Cereal Grains and Pasta,13.36,361,11.98,1.66,72.53,2.4,0.31,0.47,2,100
20084,"Wheat flour, white, cake, enriched",Cereal Grains and Pasta,12.51,362,8.20,0.86,78.03,1.7,0.31,0.39,2,105
20086,"Wheat flour, white, tortilla mix, enriched",Cereal Grains and Pasta,10.08,405,9.66,10.63,67.14,,,2.49,677,100
20087,"Wheat, sprouted",Cereal Grains and Pasta,47.75,198,7.49,1.27,42.53,1.1,,0.96,16,169
20088,"Wild rice, raw",Cereal Grains and Pasta,7.76,357,14.73,1.08,74.90,6.2,2.50,1.53,7,427
20089,"Wild rice, cooked",Cereal Grains and Pasta,73.93,101,3.99,0.34,21.34,1.8,0.73,0.40,3,101
20090,"Rice flour, brown",Cereal Grains and Pasta,11.97,363,7.23,2.78,76.48,4.6,0.85,1.54,8,289
20091,"Pasta, corn, dry",Cereal Grains and Pasta,10.00,357,7.46,2.08,79.26,11.0,,1.20,3,294
20092,"Pasta, corn, cooked",Cereal Grains and Pasta,68.31,126,2.63,0.73,27.91,4.8,,0.42,0,31
20093,"Pasta, fresh-refrigerated, plain, as purchased",Cereal Grains and Pasta,31.00,288,11.31,2.30,54.73,,,0.66,26,179
20094,"Pasta, fresh-refrigerated, plain, cooked",Cereal Grains and Pasta,68.56,131,5.15,1.05,24.93,,,0.30,6,24
20095,"Pasta, fresh-refrigerated, spinach, as purchased",Cereal Grains and Pasta,30.10,289,11.26,2.10,55.72,,,0.82,27,272
20096,"Pasta, fresh-refrigerated, spinach, cooked",Cereal Grains and Pasta,68.58,130,5.06,0.94,25.04,,,0.37,6,37
20097,"Pasta, homemade, made with egg, cooked",Cereal Grains and Pasta,68.71,130,5.28,1.74,23.54,,,0.73,83,21
20098,"Pasta, homemade, made without egg, cooked",Cereal Grains and Pasta,68.86,124,4.37,0.98,25.12,,,0.66,74,19
20099,"Macaroni, dry, enriched",Cereal Grains and Pasta,9.90,371,13.04,1.51,74.67,3.2,2.67,0.88,6,223
20100,"Macaroni, cooked, enriched",Cereal Grains and Pasta,62.13,158,5.80,0.93,30.86,1.8,0.56,0.27,1,44
20105,"Macaroni, vegetable, dry, enriched",Cereal Grains and Pasta,9.89,367,13.14,1.04,74.88,4.3,,1.05,43,285
20106,"Macaroni, vegetable, cooked, enriched",Cereal Grains and Pasta,68.37,128,4.53,0.11,26.61,4.3,1.15,0.38,6,31
20107,"Macaroni, whole-wheat, dry",Cereal Grains and Pasta,7.34,348,14.63,1.40,75.03,8.3,,1.60,8,215
20108,"Macaroni, whole-wheat, cooked",Cereal Grains and Pasta,67.15,124,5.33,0.54,26.54,2.8,0.80,0.44,3,44
20109,"Noodles, egg, dry, enriched",Cereal Grains and Pasta,9.01,384,14.16,4.44,71.27,3.3,1.88,1.12,21,244
20110,"Noodles, egg, cooked, enriched",Cereal Grains and Pasta,67.73,138,4.54,2.07,25.16,1.2,0.40,0.50,5,38
20111,"Noodles, egg, spinach, dry, enriched",Cereal Grains and Pasta,8.72,382,14.61,4.55,70.32,6.8,,1.79,72,355
20112,"Noodles, egg, spinach, cooked, enriched",Cereal Grains and Pasta,68.52,132,5.04,1.57,24.25,2.3,0.71,0.62,12,37
20113,"Noodles, chinese, chow mein",Cereal Grains and Pasta,1.18,459,10.58,17.64,67.02,2.7,0.94,2.81,847,120
20114,"Noodles, japanese, soba, dry",Cereal Grains and Pasta,6.88,336,14.38,0.71,74.62,,,3.41,792,252
20115,"Noodles, japanese, soba, cooked",Cereal Grains and Pasta,73.01,99,5.06,0.10,21.44,,,0.39,60,35
20116,"Noodles, japanese, somen, dry",Cereal Grains and Pasta,9.21,356,11.35,0.81,74.10,4.3,,4.54,1840,164
20117,"Noodles, japanese, somen, cooked",Cereal Grains and Pasta,67.91,131,4.00,0.18,27.54,,,0.36,161,29
20120,"Spaghetti, dry, enriched",Cereal Grains and Pasta,9.90,371,13.04,1.51,74.67,3.2,2.67,0.88,6,223
20121,"Spaghetti, cooked, enriched, without added salt",Cereal Grains and Pasta,62.13,158,5.80,0.93,30.86,1.8,0.56,0.27,1,44
20124,"Spaghetti, whole-wheat, dry",Cereal Grains and Pasta,7.34,348,14.63,1.40,75.03,,,1.60,8,215
20125,"Spaghetti, whole-wheat, cooked",Cereal Grains and Pasta,67.15,124,5.33,0.54,26.54,4.5,0.80,0.44,3,44
20126,"Spaghetti, spinach, dry",Cereal Grains and Pasta,8.34,372,13.35,1.57,74.81,10.6,2.72,1.93,36,376
20127,"Spaghetti, spinach, cooked",Cereal Grains and Pasta,68.14,130,4.58,0.63,26.15,,,0.50,14,58
20129,"Wheat flours, bread, unenriched",Cereal Grains and Pasta,13.36,361,11.98,1.66,72.53,2.4,0.31,0.47,2,100
20130,Barley flour or meal,Cereal Grains and Pasta,12.11,345,10.50,1.60,74.52,10.1,0.80,1.28,4,309
20131,Barley malt flour,Cereal Grains and Pasta,8.21,361,10.28,1.84,78.30,7.1,0.80,1.37,11,224
20132,"Oat flour, partially debranned",Cereal Grains and Pasta,8.55,404,14.66,9.12,65.70,6.5,0.80,1.97,19,371
20133,"Rice noodles, dry",Cereal Grains and Pasta,11.91,364,5.95,0.56,80.18,1.6,0.12,0.85,182,30
20134,"Rice noodles, cooked",Cereal Grains and Pasta,73.82,108,1.79,0.20,24.01,1.0,0.03,0.18,19,4
20137,"Quinoa, cooked",Cereal Grains and Pasta,71.61,120,4.40,1.92,21.30,2.8,0.87,0.76,7,172
20140,"Spelt, uncooked",Cereal Grains and Pasta,11.02,338,14.57,2.43,70.19,10.7,6.82,1.78,8,388
20141,"Spelt, cooked",Cereal Grains and Pasta,66.56,127,5.50,0.85,26.44,3.9,,0.65,5,143
20142,"Teff, uncooked",Cereal Grains and Pasta,8.82,367,13.30,2.38,73.13,8.0,1.84,2.37,12,427
20143,"Teff, cooked",Cereal Grains and Pasta,74.93,101,3.87,0.65,19.86,2.8,,0.69,8,107
20310,"Noodles, egg, cooked, enriched, with added salt",Cereal Grains and Pasta,67.73,138,4.54,2.07,25.16,1.2,0.40,0.50,165,38
20314,"Corn, white",Cereal Grains and Pasta,10.37,365,9.42,4.74,74.26,,,1.20,35,287
20315,"Corn flour, whole-grain, blue (harina de maiz morado)",Cereal Grains and Pasta,10.83,364,8.75,5.09,73.89,8.4,,1.44,5,381
20316,"Corn flour, whole-grain, white",Cereal Grains and Pasta,10.91,361,6.93,3.86,76.85,7.3,0.64,1.45,5,315
20317,"Corn flour, masa, enriched, yellow",Cereal Grains and Pasta,9.04,365,9.28,3.86,76.29,6.4,,1.52,5,263
20320,"Cornmeal, whole-grain, white",Cereal Grains and Pasta,10.26,362,8.12,3.59,76.89,7.3,0.64,1.13,35,287
20321,"Spaghetti, cooked, enriched, with added salt",Cereal Grains and Pasta,62.13,157,5.80,0.93,30.59,1.8,0.56,0.55,131,44
20322,"Cornmeal, degermed, enriched, white",Cereal Grains and Pasta,11.18,370,7.11,1.75,79.45,3.9,1.61,0.51,7,142
20323,"Cornmeal, self-rising, bolted, plain, enriched, white",Cereal Grains and Pasta,12.59,334,8.28,3.40,70.28,6.7,,5.45,1247,255
20324,"Cornmeal, self-rising, bolted, with wheat flour added, enriched, white",Cereal Grains and Pasta,10.33,348,8.41,2.85,73.43,6.3,,4.98,1319,207
20325,"Cornmeal, self-rising, degermed, enriched, white",Cereal Grains and Pasta,10.17,355,8.41,1.72,74.79,7.1,,4.91,1348,170
20330,"Hominy, canned, yellow",Cereal Grains and Pasta,82.53,72,1.48,0.88,14.26,2.5,,0.86,345,9
20345,"Rice, white, long-grain, regular, cooked, enriched, with salt",Cereal Grains and Pasta,68.44,130,2.69,0.28,28.17,0.4,0.05,0.41,382,35
20381,"Wheat flour, white, all-purpose, enriched, calcium-fortified",Cereal Grains and Pasta,11.92,364,10.33,0.98,76.31,2.7,,0.47,2,107
20400,"Macaroni, cooked, unenriched",Cereal Grains and Pasta,62.13,158,5.80,0.93,30.86,1.8,0.56,0.27,1,44
20409,"Noodles, egg, dry, unenriched",Cereal Grains and Pasta,9.01,384,14.16,4.44,71.27,3.3,1.88,1.12,21,244
20410,"Noodles, egg, cooked, unenriched, without added salt",Cereal Grains and Pasta,67.73,138,4.54,2.07,25.16,1.2,0.40,0.50,5,38
20420,"Spaghetti, dry, unenriched",Cereal Grains and Pasta,9.90,371,13.04,1.51,74.67,3.2,2.67,0.88,6,223
20421,"Spaghetti, cooked, unenriched, without added salt",Cereal Grains and Pasta,62.13,158,5.80,0.93,30.86,1.8,0.56,0.27,1,44
20422,"Cornmeal, degermed, unenriched, yellow",Cereal Grains and Pasta,11.18,370,7.11,1.75,79.45,3.9,1.61,0.51,7,142
20444,"Rice, white, long-grain, regular, raw, unenriched",Cereal Grains and Pasta,11.62,365,7.13,0.66,79.95,1.3,0.12,0.64,5,115
20445,"Rice, white, long-grain, regular, cooked, unenriched, without salt",Cereal Grains and Pasta,68.44,130,2.69,0.28,28.17,0.4,0.05,0.41,1,35
20446,"Rice, white, long-grain, parboiled, unenriched, dry",Cereal Grains and Pasta,9.86,374,7.51,1.03,80.89,1.8,0.33,0.71,2,174
20447,"Rice, white, long-grain, parboiled, unenriched, cooked",Cereal Grains and Pasta,70.36,123,2.91,0.37,26.05,0.9,0.11,0.30,2,56
20450,"Rice, white, medium-grain, raw, unenriched",Cereal Grains and Pasta,12.89,360,6.61,0.58,79.34,,,0.58,1,86
20451,"Rice, white, medium-grain, cooked, unenriched",Cereal Grains and Pasta,68.61,130,2.38,0.21,28.59,,,0.21,0,29
20452,"Rice, white, short-grain, raw, unenriched",Cereal Grains and Pasta,13.29,358,6.50,0.52,79.15,,,0.54,1,76
20453,"Rice, white, short-grain, cooked, unenriched",Cereal Grains and Pasta,68.53,130,2.36,0.19,28.73,,,0.20,0,26
20466,"Semolina, unenriched",Cereal Grains and Pasta,12.67,360,12.68,1.05,72.83,3.9,,0.77,1,186
20481,"Wheat flour, white, all-purpose, unenriched",Cereal Grains and Pasta,11.92,364,10.33,0.98,76.31,2.7,0.27,0.47,2,107
20499,"Macaroni, dry, unenriched",Cereal Grains and Pasta,9.90,371,13.04,1.51,74.67,3.2,2.67,0.88,6,223
20510,"Noodles, egg, cooked, unenriched, with added salt",Cereal Grains and Pasta,67.73,138,4.54,2.07,25.16,1.2,0.40,0.50,165,38
20521,"Spaghetti, cooked, unenriched, with added salt",Cereal Grains and Pasta,62.13,157,5.80,0.93,30.59,1.8,0.56,0.55,131,44
20522,"Cornmeal, degermed, unenriched, white",Cereal Grains and Pasta,11.18,370,7.11,1.75,79.45,3.9,1.61,0.51,7,142
20545,"Rice, white, long-grain, regular, cooked, unenriched, with salt",Cereal Grains and Pasta,68.44,130,2.69,0.28,28.17,0.4,0.05,0.41,382,35
20581,"Wheat flour, white, all-purpose, enriched, unbleached",Cereal Grains and Pasta,11.92,364,10.33,0.98,76.31,2.7,0.27,0.47,2,107
20647,Millet flour,Cereal Grains and Pasta,10.74,373,10.75,4.25,73.05,3.5,1.66,1.21,4,224
20648,Sorghum flour,Cereal Grains and Pasta,10.06,361,7.87,3.29,77.47,6.6,1.87,1.31,4,311
20649,"Wheat flour, whole-grain, soft wheat",Cereal Grains and Pasta,12.42,332,9.61,1.95,74.48,13.1,1.02,1.53,3,394
23000,"Beef, shoulder pot roast or steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.58,130,21.39,4.97,0.00,0.0,0.00,1.13,72,395
23001,"Beef, short loin, porterhouse steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,64.67,214,20.49,14.06,0.00,0.0,0.00,0.94,48,243
23005,"Beef, short loin, t-bone steak, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,64.06,223,20.11,15.18,0.00,0.0,0.00,0.92,40,232
23053,"Beef, chuck, shoulder clod, shoulder tender, medallion, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.80,144,20.54,6.22,0.00,0.0,0.00,0.92,58,327
23055,"Beef, round, knuckle, tip side, steak, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,73.25,129,21.69,4.00,0.00,0.0,0.00,1.09,61,381
23056,"Beef, round, knuckle, tip side, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,65.68,168,29.08,4.84,0.00,0.0,0.00,1.16,54,365
23057,"Beef, chuck, shoulder clod, shoulder top and center steaks, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.51,141,20.67,5.88,0.00,0.0,0.00,0.90,60,355
23059,"Beef, chuck, shoulder clod, top blade, steak, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,70.46,176,18.99,10.52,0.00,0.0,0.00,0.90,74,309
23060,"Beef, chuck, shoulder clod, top blade, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,62.04,222,24.93,12.79,0.00,0.0,0.00,0.94,77,322
23061,"Beef, round, knuckle, tip center, steak, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.45,143,20.93,5.89,0.00,0.0,0.00,0.96,54,363
23062,"Beef, round, knuckle, tip center, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,65.46,177,27.12,6.78,0.00,0.0,0.00,1.00,52,377
23063,"Beef, round, outside round, bottom round, steak, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.19,142,21.59,5.53,0.00,0.0,0.00,1.05,62,345
23064,"Beef, round, outside round, bottom round, steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,64.28,182,27.52,7.10,0.00,0.0,0.00,1.16,58,363
23068,"Beef, chuck, short ribs, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,69.33,169,19.68,10.02,0.05,0.0,0.00,0.91,85,307
23071,"Beef, chuck eye Country-Style ribs, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.00,228,31.41,11.43,0.00,0.0,0.00,1.08,69,286
23074,"Beef, chuck eye Country-Style ribs, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,71.19,146,20.96,6.95,0.00,0.0,0.00,0.96,82,317
23077,"Beef, chuck eye steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,60.79,209,27.94,10.79,0.00,0.0,0.00,1.03,75,380
23080,"Beef, chuck eye steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,70.25,153,21.29,7.56,0.00,0.0,0.00,0.94,70,371
23083,"Beef, shoulder pot roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,60.41,196,31.48,7.78,0.00,0.0,0.00,1.40,61,359
23086,"Beef, chuck, mock tender steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,59.82,190,33.31,6.34,0.00,0.0,0.00,1.65,68,309
23089,"Beef, chuck, mock tender steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,73.71,123,21.30,4.17,0.00,0.0,0.00,1.19,81,346
23090,"Beef, chuck for stew, separable lean and fat, all grades, cooked, braised",Beef Products,60.08,191,32.41,6.82,0.00,0.0,0.00,1.26,67,319
23093,"Beef, chuck for stew, separable lean and fat, all grades, raw",Beef Products,72.51,128,21.75,4.48,0.16,0.0,0.00,1.11,80,367
23098,"Beef, chuck, under blade steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,58.11,219,31.35,10.41,0.00,0.0,0.00,1.42,65,308
23099,"Beef, chuck, under blade pot roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,52.51,291,26.70,20.49,0.00,0.0,0.00,1.22,62,262
23102,"Beef, chuck, under blade pot roast or steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,66.70,196,19.17,13.26,0.00,0.0,0.00,0.98,76,336
23108,"Beef, chuck, under blade center steak, boneless, Denver Cut, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,68.11,182,18.99,11.64,0.36,0.0,0.00,0.90,76,315
23116,"Beef, chuck, under blade steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,53.80,275,28.23,18.00,0.00,0.0,0.00,1.30,65,273
23119,"Beef, chuck, mock tender steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,57.29,220,32.07,10.18,0.00,0.0,0.00,1.62,67,298
23122,"Beef, chuck, mock tender steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,73.30,128,21.13,4.79,0.00,0.0,0.00,1.19,80,343
23125,"Beef, chuck, short ribs, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,52.01,305,25.48,22.58,0.00,0.0,0.00,0.83,70,239
23128,"Beef, chuck, short ribs, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,63.84,235,17.48,18.33,0.00,0.0,0.00,0.84,78,277
23131,"Beef, shoulder pot roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,59.76,204,31.03,8.92,0.00,0.0,0.00,1.38,61,352
23134,"Beef, chuck eye Country-Style ribs, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,51.91,296,27.69,20.55,0.00,0.0,0.00,0.96,65,247
23137,"Beef, chuck eye Country-Style ribs, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,66.33,205,18.97,14.32,0.00,0.0,0.00,0.88,77,291
23140,"Beef, chuck eye steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,55.22,277,24.98,19.64,0.00,0.0,0.00,0.94,71,325
23143,"Beef, chuck eye steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,64.48,223,18.86,16.35,0.00,0.0,0.00,0.86,66,329
23150,"Beef, rib eye steak/roast, bone-in, lip-on, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,69.24,166,21.22,9.04,0.00,0.0,0.00,0.97,64,275
23153,"Beef, rib eye steak/roast, boneless, lip-on, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.14,156,21.99,7.54,0.00,0.0,0.00,1.01,56,276
23162,"Beef, plate steak, boneless, inside skirt, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,57.00,234,29.99,12.69,0.00,0.0,0.00,1.05,63,303
23163,"Beef, plate steak, boneless, inside skirt, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,69.50,164,21.17,8.82,0.00,0.0,0.00,0.95,66,272
23168,"Beef, plate steak, boneless, outside skirt, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,52.29,282,27.68,19.01,0.00,0.0,0.00,1.30,71,284
23169,"Beef, plate steak, boneless, outside skirt, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,65.60,206,18.74,14.53,0.19,0.0,0.00,0.94,67,253
23174,"Beef, rib eye steak, boneless, lip off, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,60.91,206,28.11,10.37,0.00,0.0,0.00,1.09,59,296
23175,"Beef, rib eye steak, boneless, lip off, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,69.93,154,21.85,7.41,0.00,0.0,0.00,0.98,56,276
23180,"Beef, rib, back ribs, bone-in, separable lean only, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,51.12,299,28.36,20.57,0.00,0.0,0.00,0.64,68,284
23181,"Beef, rib, back ribs, bone-in, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,61.70,239,19.11,17.91,0.46,0.0,0.00,0.82,60,258
23192,"Beef, rib eye steak/roast, bone-in, lip-on, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,60.80,255,18.13,20.31,0.00,0.0,0.00,0.85,56,233
23201,"Beef, rib eye steak/roast, boneless, lip-on, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,61.77,244,18.85,18.73,0.00,0.0,0.00,0.89,50,236
23214,"Beef, plate steak, boneless, inside skirt, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,56.07,245,29.36,14.20,0.00,0.0,0.00,1.04,63,298
23217,"Beef, plate steak, boneless, inside skirt, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,67.25,187,20.38,11.71,0.00,0.0,0.00,0.92,64,262
23220,"Beef, ground, unspecified fat content, cooked",Beef Products,58.69,234,25.07,14.53,0.62,0.0,0.00,1.09,85,353
23221,"Beef, plate steak, boneless, outside skirt, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,51.41,292,27.06,20.47,0.00,0.0,0.00,1.28,70,280
23224,"Beef, plate steak, boneless, outside skirt, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,63.17,232,17.98,17.59,0.35,0.0,0.00,0.91,65,242
23227,"Beef, rib eye steak, boneless, lip off, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,55.59,271,24.85,19.02,0.00,0.0,0.00,0.99,58,279
23230,"Beef, rib eye steak, boneless, lip off, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,63.02,228,19.26,16.71,0.12,0.0,0.00,0.88,52,246
23233,"Beef, rib, back ribs, bone-in, separable lean and fat, trimmed to 0"" fat, all grades, cooked, braised",Beef Products,46.49,360,24.23,29.21,0.00,0.0,0.00,0.62,63,255
23236,"Beef, rib, back ribs, bone-in, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,53.91,324,16.15,28.42,0.78,0.0,0.00,0.73,53,218
23244,"Beef, loin, top sirloin cap steak, boneless, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,72.93,134,21.38,5.36,0.00,0.0,0.00,0.98,55,375
23253,"Beef, top loin petite roast/filet, boneless, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.59,143,22.61,5.84,0.00,0.0,0.00,1.00,60,407
23256,"Beef, loin, top sirloin filet, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,62.92,171,30.58,5.37,0.00,0.0,0.00,1.31,59,397
23259,"Beef, loin, top sirloin petite roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,63.93,170,29.12,5.92,0.00,0.0,0.00,1.12,57,377
23261,"Beef, loin, top sirloin petite roast/filet, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.67,128,23.04,3.98,0.00,0.0,0.00,1.06,65,395
23263,"Beef, ribeye  petite roast/filet, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,71.57,133,22.66,4.66,0.04,0.0,0.00,1.06,66,402
23266,"Beef, ribeye cap steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,57.18,246,24.66,15.70,1.53,0.0,0.00,0.94,86,351
23269,"Beef, ribeye cap steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,67.31,180,19.70,10.60,1.51,0.0,0.00,0.89,88,357
23272,"Beef, ribeye filet, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,60.74,199,28.77,9.20,0.17,0.0,0.00,1.12,56,410
23275,"Beef, ribeye petite roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,63.52,178,28.15,7.31,0.00,0.0,0.00,1.09,55,398
23281,"Beef, loin, top sirloin cap steak, boneless, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,67.40,191,19.90,12.40,0.00,0.0,0.00,0.90,80,326
23290,"Beef, top loin petite roast/filet, boneless, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,66.40,187,21.10,11.30,0.30,0.0,0.00,0.90,89,360
23324,"Beef, round, top round steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.64,124,23.49,3.34,0.00,0.0,0.00,1.12,54,312
23327,"Beef, round, top round roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,72.51,125,23.45,3.50,0.00,0.0,0.00,1.11,54,311
23330,"Beef, round, eye of round roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,73.09,124,23.27,3.44,0.00,0.0,0.00,1.09,53,317
23333,"Beef, round, eye of round steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,73.07,124,23.26,3.48,0.00,0.0,0.00,1.09,53,317
23336,"Beef, loin, tenderloin roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,71.50,149,21.67,6.93,0.00,0.0,0.00,1.09,44,284
23339,"Beef, loin, top loin steak, boneless, lip off, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,68.75,163,22.43,8.17,0.00,0.0,0.00,1.00,45,273
23342,"Beef, loin, tenderloin steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, raw",Beef Products,71.70,147,21.72,6.67,0.00,0.0,0.00,1.10,44,285
23345,"Beef, loin, tenderloin roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.35,183,27.31,8.14,0.00,0.0,0.00,1.24,56,346
23348,"Beef, round, top round roast, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.56,160,29.90,4.49,0.00,0.0,0.00,1.24,67,384
23351,"Beef, round, eye of round steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,65.06,159,29.66,4.47,0.00,0.0,0.00,1.22,68,411
23354,"Beef, round, top round steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.96,121,23.59,2.94,0.00,0.0,0.00,1.12,54,313
23357,"Beef, round, top round roast, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.96,121,23.59,2.94,0.00,0.0,0.00,1.12,54,313
23360,"Beef, round, eye of round roast, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,73.43,121,23.37,3.04,0.00,0.0,0.00,1.10,53,319
23363,"Beef, round, eye of round steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,73.43,121,23.37,3.04,0.00,0.0,0.00,1.10,53,319
23366,"Beef, loin, tenderloin roast, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.44,139,21.94,5.74,0.00,0.0,0.00,1.11,44,289
23369,"Beef, loin, top loin steak, boneless, lip off, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,70.63,143,23.07,5.67,0.00,0.0,0.00,1.02,46,284
23372,"Beef, loin, tenderloin steak, boneless, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.44,139,21.94,5.74,0.00,0.0,0.00,1.11,44,289
23375,"Beef, loin, tenderloin roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.79,177,27.51,7.49,0.00,0.0,0.00,1.25,56,350
23378,"Beef, round, top round roast, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.96,162,30.09,3.77,0.00,0.0,0.00,1.29,67,387
23381,"Beef, round, eye of round steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,65.35,155,29.85,3.90,0.00,0.0,0.00,1.27,68,414
23386,"Beef, loin, top loin steak, boneless, lip-on, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.63,143,23.07,5.67,0.00,0.0,0.00,1.02,46,284
23388,"Beef, loin, top loin steak, boneless, lip-on, separable lean and fat, trimmed to 1/8"" fat, all grades, raw",Beef Products,65.33,199,21.29,12.68,0.00,0.0,0.00,0.95,44,254
23509,"Beef, chuck, mock tender steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,66.27,159,25.90,5.42,0.00,0.0,0.00,1.36,71,293
23511,"Beef, chuck, top blade, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,62.72,203,26.13,10.16,0.00,0.0,0.00,1.10,68,304
23513,"Beef, chuck, clod roast, separable lean only, trimmed to 1/4"" fat, all grades, raw",Beef Products,73.41,129,19.63,5.02,0.00,0.0,0.00,1.17,64,354
23514,"Beef, chuck, clod roast, separable lean only, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,64.32,172,26.82,6.34,0.00,0.0,0.00,1.20,74,385
23515,"Beef, chuck, clod roast, separable lean only, trimmed to 1/4"" fat, all grades, cooked, roasted",Beef Products,64.92,173,26.36,6.75,0.00,0.0,0.00,1.17,71,372
23516,"Beef, shoulder steak, boneless, separable lean only, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,64.62,175,28.60,5.82,0.00,0.0,0.00,1.23,68,372
23517,"Beef, chuck, clod steak, separable lean only, trimmed to 1/4"" fat, all grades, cooked, braised",Beef Products,60.02,189,29.34,7.04,0.00,0.0,0.00,1.17,60,287
23519,"Beef, chuck, mock tender steak, separable lean and fat, trimmed to 0"" fat, USDA choice, cooked, broiled",Beef Products,65.57,161,25.73,5.72,0.00,0.0,0.00,1.50,73,293
23521,"Beef, chuck, mock tender steak, separable lean and fat, trimmed to 0"" fat, USDA select, cooked, broiled",Beef Products,67.09,159,26.08,5.24,0.00,0.0,0.00,1.15,68,293
23540,"Beef, plate, inside skirt steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,60.34,220,26.13,12.05,0.00,0.0,0.00,1.07,75,289
23541,"Beef, plate, outside skirt steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,57.16,255,23.51,17.13,0.00,0.0,0.00,0.93,92,379
23545,"Beef, loin, bottom sirloin butt, tri-tip steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,50.50,265,29.97,15.18,0.00,0.0,0.00,1.45,72,437
23547,"Beef, chuck, mock tender steak, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,66.19,160,25.87,5.52,0.00,0.0,0.00,1.36,71,293
23549,"Beef, chuck, top blade, separable lean and fat, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,61.57,216,25.73,11.73,0.00,0.0,0.00,1.09,67,299
23552,"Beef, chuck, clod roast, separable lean and fat, trimmed to 0"" fat, all grades, cooked, roasted",Beef Products,61.09,207,25.70,10.84,0.00,0.0,0.00,1.15,71,367
23554,"Beef, shoulder steak, boneless, separable lean and fat, trimmed to 0"" fat, all grades, cooked, grilled",Beef Products,64.02,182,28.29,6.80,0.00,0.0,0.00,1.22,67,366
23557,"Beef, ground, 95% lean meat / 5% fat, raw",Beef Products,73.28,137,21.41,5.00,0.00,0.0,0.00,1.05,66,346
23558,"Beef, ground, 95% lean meat / 5% fat, patty, cooked, broiled",Beef Products,66.03,171,26.29,6.55,0.00,0.0,0.00,1.06,65,348
23559,"Beef, ground, 95% lean meat / 5% fat, patty, cooked, pan-broiled",Beef Products,66.90,164,25.80,5.94,0.00,0.0,0.00,1.09,71,376
23560,"Beef, ground, 95% lean meat / 5% fat, crumbles, cooked, pan-browned",Beef Products,62.58,193,29.17,7.58,0.00,0.0,0.00,1.34,85,459
23562,"Beef, ground, 90% lean meat / 10% fat, raw",Beef Products,69.50,176,20.00,10.00,0.00,0.0,0.00,0.98,66,321
23563,"Beef, ground, 90% lean meat / 10% fat, patty, cooked, broiled",Beef Products,61.35,217,26.11,11.73,0.00,0.0,0.00,1.04,68,333
23564,"Beef, ground, 90% lean meat / 10% fat, patty, cooked, pan-broiled",Beef Products,63.21,204,25.21,10.68,0.00,0.0,0.00,1.08,75,363
23565,"Beef, ground, 90% lean meat / 10% fat, crumbles, cooked, pan-browned",Beef Products,58.58,230,28.45,12.04,0.00,0.0,0.00,1.28,87,433
23567,"Beef, ground, 85% lean meat / 15% fat, raw",Beef Products,65.72,215,18.59,15.00,0.00,0.0,0.00,0.91,66,295
23568,"Beef, ground, 85% lean meat / 15% fat, patty, cooked, broiled",Beef Products,58.03,250,25.93,15.48,0.00,0.0,0.00,1.02,72,318
23569,"Beef, ground, 85% lean meat / 15% fat, patty, cooked, pan-broiled",Beef Products,60.61,232,24.62,14.02,0.00,0.0,0.00,1.07,79,349
23570,"Beef, ground, 85% lean meat / 15% fat, crumbles, cooked, pan-browned",Beef Products,55.90,256,27.73,15.30,0.00,0.0,0.00,1.22,89,407
23572,"Beef, ground, 80% lean meat / 20% fat, raw",Beef Products,61.94,254,17.17,20.00,0.00,0.0,0.00,0.84,67,270
23573,"Beef, ground, 80% lean meat / 20% fat, patty, cooked, broiled",Beef Products,56.08,271,25.75,17.82,0.00,0.0,0.00,1.00,75,304
23574,"Beef, ground, 80% lean meat / 20% fat, patty, cooked, pan-broiled",Beef Products,59.11,246,24.04,15.94,0.00,0.0,0.00,1.06,83,335
23575,"Beef, ground, 80% lean meat / 20% fat, crumbles, cooked, pan-browned",Beef Products,54.54,272,27.00,17.36,0.00,0.0,0.00,1.16,91,380
23577,"Beef, ground, 75% lean meat / 25% fat, raw",Beef Products,58.16,293,15.76,25.00,0.00,0.0,0.00,0.77,67,244
23578,"Beef, ground, 75% lean meat / 25% fat, patty, cooked, broiled",Beef Products,55.49,278,25.56,18.72,0.00,0.0,0.00,0.98,78,289
23579,"Beef, ground, 75% lean meat / 25% fat, patty, cooked, pan-broiled",Beef Products,58.69,248,23.45,16.44,0.00,0.0,0.00,1.05,87,322
23580,"Beef, ground, 75% lean meat / 25% fat, crumbles, cooked, pan-browned",Beef Products,54.50,277,26.28,18.21,0.00,0.0,0.00,1.10,93,354
23594,"Beef, round, bottom round, roast, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,72.58,128,22.19,4.31,0.00,0.0,0.00,1.09,59,350
23596,"Beef, brisket, flat half, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,73.76,127,21.57,3.84,0.00,0.0,0.00,1.01,74,336
23597,"Beef, round, eye of round, roast, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,73.43,124,22.60,3.00,0.00,0.0,0.00,1.08,60,357
23599,"Beef, rib, small end (ribs 10-12), separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,69.95,141,22.33,5.04,0.00,0.0,0.00,0.99,56,347
23601,"Beef, tenderloin, steak, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,70.62,153,22.12,6.52,0.00,0.0,0.00,1.06,56,347
23603,"Beef, chuck, arm pot roast, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,73.32,132,22.11,4.19,0.00,0.0,0.00,1.01,74,337
23607,"Beef, short loin, top loin steak, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,71.49,138,22.93,5.15,0.00,0.0,0.00,1.02,57,354
23609,"Beef, round, top round, steak, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,75.02,135,22.91,4.09,0.00,0.0,0.00,1.13,61,362
23611,"Beef, top sirloin, steak, separable lean only, trimmed to 1/8"" fat, all grades, raw",Beef Products,72.91,131,22.09,4.08,0.00,0.0,0.00,1.14,56,349
23640,"Beef, variety meats and by-products, tripe, cooked, simmered",Beef Products,81.65,94,11.71,4.05,1.99,0.0,0.00,0.60,68,42
23646,"Beef, bottom sirloin, tri-tip roast, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.41,142,21.26,5.63,0.00,0.0,0.00,1.06,54,333
23651,"Beef, round, tip round, roast, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,74.48,126,21.07,3.95,0.00,0.0,0.00,1.03,54,323
23654,"Beef, flank, steak, separable lean only, trimmed to 0"" fat, all grades, cooked, broiled",Beef Products,64.79,186,27.89,7.40,0.00,0.0,0.00,1.10,57,350
23656,"Beef, flank, steak, separable lean only, trimmed to 0"" fat, all grades, raw",Beef Products,72.08,141,21.57,5.47,0.00,0.0,0.00,1.02,55,340
28285,"Bread, chapati or roti, whole wheat, frozen",Baked Products,35.43,299,7.85,9.20,46.13,9.7,2.93,1.39,298,196
28286,"Bread, paratha (Indian bread), whole wheat, frozen",Baked Products,33.50,326,6.36,13.20,45.35,9.6,4.15,1.59,452,139
28287,"Bread, naan (Indian bread), whole wheat, refrigerated",Baked Products,34.90,286,10.20,6.70,46.21,4.8,3.40,1.99,467,185
28288,"Bread, roll, Mexican, bollilo",Baked Products,26.05,318,10.65,5.80,55.77,2.2,3.55,1.73,506,131
28292,"Crackers, multigrain",Baked Products,2.50,482,7.10,20.40,67.60,3.5,12.00,2.40,883,171
28295,"Tortillas, ready-to-bake or -fry, whole wheat",Baked Products,30.15,310,9.76,9.76,45.89,9.8,2.44,4.45,512,262
28301,"Cookies, peanut butter, commercially prepared, sugar free",Baked Products,6.17,523,10.34,31.03,50.52,3.4,0.00,1.92,448,202
28302,"Cookies, graham crackers, plain or honey, lowfat",Baked Products,8.01,386,5.71,5.71,77.96,5.7,22.86,2.60,629,171
28303,"Crackers, cheese, whole grain",Baked Products,14.26,412,9.62,16.03,57.29,6.4,0.00,2.79,802,212
28306,"Bread, chapati or roti, plain, commercially prepared",Baked Products,33.00,297,11.25,7.45,46.36,4.9,2.72,1.94,409,266
28307,"Bread, naan (Indian bread), plain, commercially prepared, refrigerated",Baked Products,32.60,291,9.62,5.65,50.43,2.2,3.55,1.69,465,125
31021,"Potatoes, hash brown, refrigerated, unprepared",Vegetables and Vegetable Products,77.82,84,1.75,0.08,19.16,1.8,0.91,1.19,42,425
31022,"Potatoes, hash brown, refrigerated, prepared, pan-fried in canola oil",Vegetables and Vegetable Products,50.57,242,3.24,10.30,33.99,3.6,1.16,1.91,77,704
31023,"Sweet Potatoes, french fried, frozen, unprepared",Vegetables and Vegetable Products,67.38,152,1.57,5.06,24.94,3.6,8.19,1.05,229,266
31024,"Sweet Potatoes, french fried, crosscut, frozen, unprepared",Vegetables and Vegetable Products,60.59,209,1.70,11.10,25.52,3.4,6.46,1.09,214,244
31025,"Sweet Potato puffs, frozen, unprepared",Vegetables and Vegetable Products,63.02,161,1.36,3.58,30.72,1.9,7.65,1.32,250,248
31026,"Potatoes, yellow fleshed, roasted, salt added in processing, frozen, unprepared",Vegetables and Vegetable Products,70.96,119,1.99,1.85,23.44,2.6,0.31,1.76,338,444
31027,"Potatoes, yellow fleshed, french fried, frozen, unprepared",Vegetables and Vegetable Products,65.04,162,2.47,5.84,25.01,2.2,0.37,1.64,300,447
31028,"Potatoes, yellow fleshed, hash brown, shredded, salt added in processing, frozen, unprepared",Vegetables and Vegetable Products,78.34,81,2.04,0.07,17.98,2.0,0.23,1.57,330,398
31029,"Potatoes, french fried, wedge cut, frozen, unprepared",Vegetables and Vegetable Products,66.06,166,2.56,7.47,22.22,2.4,0.34,1.69,380,381
31030,"Potatoes, french fried, steak cut, salt not added in processing, frozen, unprepared",Vegetables and Vegetable Products,69.01,138,2.40,3.42,24.31,2.4,0.21,0.86,30,360
31031,"Potatoes, french fried, cross cut, frozen, unprepared",Vegetables and Vegetable Products,62.36,193,2.70,10.00,22.95,2.3,0.49,1.99,393,310
42040,"Syrups, grenadine",Sweets,32.40,268,0.00,0.00,66.91,0.0,46.55,0.69,27,28
42063,"Pectin, liquid",Sweets,96.90,11,0.00,0.00,2.10,2.1,0.00,1.00,0,0
42128,"Turkey ham, sliced, extra lean, prepackaged or deli-sliced",Sausages and Luncheon Meats,72.00,124,19.60,3.80,2.93,0.0,0.00,1.67,1038,299
42130,"Turkey bacon, cooked",Poultry Products,32.60,382,29.60,27.90,3.10,0.0,0.00,6.80,2285,395
42136,"Cream substitute, powdered, light",Dairy and Egg Products,6.20,431,1.90,15.70,73.40,0.0,73.40,2.80,229,902
42155,"Cheese, monterey, low fat",Dairy and Egg Products,46.00,313,28.20,21.60,0.70,0.0,0.56,3.50,781,81
42173,"Turkey and pork sausage, fresh, bulk, patty or link, cooked",Sausages and Luncheon Meats,50.90,307,22.70,23.00,0.70,0.0,0.00,2.70,878,337
42178,"Mayonnaise, made with tofu",Fats and Oils,56.33,322,5.95,31.79,3.06,1.1,0.85,2.87,773,66
42182,Bean beverage,Legumes and Legume Products,90.90,34,2.80,0.00,5.80,0.0,0.08,0.50,2,337
42189,"Milk, buttermilk, fluid, cultured, reduced fat",Dairy and Egg Products,87.70,56,4.10,2.00,5.30,0.0,5.30,0.90,105,180
42190,"Pork sausage rice links, brown and serve, cooked",Sausages and Luncheon Meats,44.10,407,13.70,37.63,2.36,0.0,0.00,2.22,880,212
42200,Papad,Legumes and Legume Products,3.49,371,25.56,3.25,59.87,18.6,0.00,7.82,1745,1000
42231,"Oil, flaxseed, cold pressed",Fats and Oils,0.12,884,0.11,99.98,0.00,0.0,0.00,0.00,0,0
42236,"Cereals ready-to-eat, frosted oat cereal with marshmallows",Breakfast Cereals,2.80,388,7.10,3.50,84.10,4.3,43.50,2.50,533,207
42258,"Cheese product, pasteurized process, cheddar, reduced fat",Dairy and Egg Products,51.80,240,17.60,14.10,10.60,0.0,8.02,5.90,1587,330
42262,"Sausage, chicken and beef, smoked",Sausages and Luncheon Meats,55.60,295,18.50,24.00,0.00,0.0,0.00,1.90,1020,139
42281,"Gums, seed gums (includes locust bean, guar)",Sweets,15.00,332,4.60,0.50,77.30,77.3,0.00,2.60,125,0
42289,"Oil, corn and canola",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
42290,"Milk, fluid, nonfat, calcium fortified (fat free or skim)",Dairy and Egg Products,90.80,35,3.40,0.18,4.85,0.0,4.85,0.77,52,166
42291,"Peanut butter, reduced sodium",Legumes and Legume Products,1.10,590,24.00,49.90,21.83,6.6,9.29,3.17,203,747
42303,"Cheese, muenster, low fat",Dairy and Egg Products,50.50,271,24.70,17.60,3.50,0.0,3.50,3.70,600,134
42304,"Cheese, mozzarella, nonfat",Dairy and Egg Products,60.20,141,31.70,0.00,3.50,1.8,1.48,4.60,743,106
43015,"Salad dressing, caesar dressing, regular",Fats and Oils,34.30,542,2.17,57.85,3.30,0.5,2.81,2.40,1209,29
43031,"Candies, chocolate covered, caramel with nuts",Sweets,6.10,470,9.50,21.00,60.67,4.3,41.35,2.73,156,445
43046,"Candies, nougat, with almonds",Sweets,2.15,398,3.33,1.67,92.39,3.3,83.33,0.46,33,105
43060,"Chewing gum, sugarless",Sweets,3.50,268,0.00,0.40,94.80,2.4,0.00,1.30,7,0
43098,"Pie fillings, cherry, low calorie",Sweets,86.76,53,0.82,0.16,11.98,1.2,9.15,0.28,12,118
43112,"Beans, chili, barbecue, ranch style, cooked",Legumes and Legume Products,75.50,97,5.00,1.00,16.90,4.2,5.25,1.60,725,450
43114,"Vermicelli, made from soy",Legumes and Legume Products,11.90,331,0.10,0.10,82.32,3.9,17.44,5.58,4,3
43125,"Beans, liquid from stewed kidney beans",Legumes and Legume Products,91.50,47,1.80,3.20,2.80,0.1,0.00,0.70,2,408
43128,"Chicken, meatless",Legumes and Legume Products,58.84,224,23.64,12.73,3.64,3.6,0.00,1.15,709,54
43129,"Fish sticks, meatless",Legumes and Legume Products,45.00,290,23.00,18.00,9.00,6.1,0.80,5.00,490,600
43130,"Frankfurter, meatless",Legumes and Legume Products,58.00,233,19.61,13.73,7.70,3.9,0.00,0.97,471,98
43131,"Luncheon slices, meatless",Legumes and Legume Products,65.01,189,17.78,11.11,4.44,0.0,2.22,1.66,711,200
43132,"Meatballs, meatless",Legumes and Legume Products,58.00,197,21.00,9.00,8.00,4.6,1.25,4.00,550,180
43134,Vegetarian fillets,Legumes and Legume Products,45.00,290,23.00,18.00,9.00,6.1,0.80,5.00,490,600
43135,"Sandwich spread, meatless",Legumes and Legume Products,70.00,149,8.00,9.00,9.00,3.3,4.58,4.00,630,340
43136,Vegetarian stew,Legumes and Legume Products,70.00,123,17.00,3.00,7.00,1.1,1.25,3.00,400,120
43137,Vegetarian meatloaf or patties,Legumes and Legume Products,58.00,197,21.00,9.00,8.00,4.6,1.20,4.00,550,180
43142,"Radishes, hawaiian style, pickled",Vegetables and Vegetable Products,91.50,28,1.10,0.30,5.20,2.2,2.00,1.90,789,333
43143,"Cabbage, japanese style, fresh, pickled",Vegetables and Vegetable Products,91.40,30,1.60,0.10,5.67,3.1,1.30,1.23,277,853
43144,"Cabbage, mustard, salted",Vegetables and Vegetable Products,92.10,28,1.10,0.10,5.63,3.1,1.40,1.07,717,246
43146,"Eggplant, pickled",Vegetables and Vegetable Products,86.90,49,0.90,0.70,9.77,2.5,4.80,1.73,1674,12
43212,"Bacon bits, meatless",Legumes and Legume Products,8.00,476,32.00,25.90,28.60,10.2,0.00,5.50,1770,145
43214,"Butter replacement, without fat, powder",Fats and Oils,5.00,373,2.00,1.00,89.00,0.0,5.30,3.00,1200,2
43216,"Sweeteners, tabletop, fructose, dry, powder",Sweets,0.00,368,0.00,0.00,100.00,0.0,92.70,0.00,12,0
43217,"Tomato sauce, canned, no salt added",Vegetables and Vegetable Products,91.12,29,1.32,0.18,6.69,1.5,4.25,0.69,11,331
43245,"Cereals ready-to-eat, wheat and bran, presweetened with nuts and fruits",Breakfast Cereals,8.50,385,7.10,5.60,76.20,9.7,23.60,2.60,245,382
43261,"Yogurt, fruit variety, nonfat",Dairy and Egg Products,75.40,95,4.40,0.20,19.00,0.0,19.00,1.00,58,194
43273,"Cheese, cottage, with vegetables",Dairy and Egg Products,80.30,95,10.90,4.20,3.00,0.1,0.37,1.34,403,86
43274,"Cheese, cream, low fat",Dairy and Egg Products,66.72,201,7.85,15.28,8.13,0.0,5.82,2.03,359,247
43276,"Cheese spread, cream cheese base",Dairy and Egg Products,58.50,295,7.10,28.60,3.50,0.0,3.50,2.30,436,112
43282,"Quail, cooked, total edible",Poultry Products,60.00,227,25.10,14.10,0.00,0.0,0.00,0.80,52,216
43283,"Pheasant, cooked, total edible",Poultry Products,54.20,239,32.40,12.10,0.00,0.0,0.00,1.30,43,271
43285,"Eggs, scrambled, frozen mixture",Dairy and Egg Products,72.70,131,13.10,5.60,7.50,0.0,7.50,1.10,162,147
43287,"Dove, cooked (includes squab)",Poultry Products,62.00,213,23.90,13.00,0.00,0.0,0.00,1.10,57,256
43299,"Soybean, curd cheese",Legumes and Legume Products,70.90,151,12.50,8.10,6.90,0.0,1.60,1.60,20,199
43311,"Potatoes, canned, drained solids, no salt added",Vegetables and Vegetable Products,84.30,62,1.40,0.20,13.60,2.4,0.59,0.50,5,229
43312,"Vegetables, mixed (corn, lima beans, peas, green beans, carrots) canned, no salt added",Vegetables and Vegetable Products,90.20,37,1.40,0.20,7.31,3.1,2.41,0.89,26,138
43325,"Pork, cured, ham, boneless, low sodium, extra lean and regular, roasted",Pork Products,65.80,165,22.00,7.70,0.50,0.0,0.00,4.00,969,362
43326,"Pork, cured, ham, low sodium, lean and fat, cooked",Pork Products,65.10,172,22.30,8.30,0.30,0.0,0.00,4.00,969,386
43327,"Pork, cured, ham, boneless, low sodium, extra lean (approximately 5% fat), roasted",Pork Products,67.70,145,20.90,5.50,1.50,0.0,0.00,4.40,969,287
43350,"Sauerkraut, canned, low sodium",Vegetables and Vegetable Products,92.50,22,0.90,0.10,4.35,2.5,1.78,2.15,308,170
43352,"Cheese, cottage, lowfat, 1% milkfat, no sodium added",Dairy and Egg Products,83.50,72,12.40,1.00,2.70,0.0,2.70,0.40,13,86
43365,"Tomato and vegetable juice, low sodium",Vegetables and Vegetable Products,93.50,22,0.60,0.10,4.59,0.8,3.80,1.21,70,193
43366,"Turkey, wing, smoked, cooked, with skin, bone removed",Poultry Products,59.50,221,27.40,12.41,0.00,0.0,0.00,0.70,996,266
43367,"Turkey, drumstick, smoked, cooked, with skin, bone removed",Poultry Products,61.20,208,27.90,9.80,0.00,0.0,0.00,1.10,996,280
43378,"Pork, cured, bacon, cooked, broiled, pan-fried or roasted, reduced sodium",Pork Products,12.32,541,37.04,41.78,1.43,0.0,0.00,7.43,1030,565
43379,"Cheese, pasteurized process, swiss, low fat",Dairy and Egg Products,59.10,165,25.50,5.10,4.30,0.0,1.35,6.00,1430,180
43382,"Cranberry juice, unsweetened",Fruits and Fruit Juices,87.13,46,0.39,0.13,12.20,0.1,12.10,0.15,2,77
43387,"Turnip greens, canned, no salt added",Vegetables and Vegetable Products,94.69,19,1.36,0.30,2.81,1.3,0.42,0.84,29,141
43390,"Turkey, light or dark meat, smoked, cooked, with skin, bone removed",Poultry Products,61.70,208,28.10,9.70,0.00,0.0,0.00,0.50,996,280
43391,"Turkey, light or dark meat, smoked, cooked, skin and bone removed",Poultry Products,64.90,170,29.30,5.00,0.00,0.0,0.00,0.80,996,298
43392,"Palm hearts, raw",Vegetables and Vegetable Products,69.50,115,2.70,0.20,25.61,1.5,17.16,1.99,14,1806
43396,"Cheese, cottage, lowfat, 1% milkfat, with vegetables",Dairy and Egg Products,83.50,67,10.90,1.00,3.00,0.0,3.00,1.60,403,86
43406,Yeast extract spread,Vegetables and Vegetable Products,40.90,185,23.88,0.90,20.42,6.5,1.60,13.90,2962,2100
43410,"Chicken, meatless, breaded, fried",Legumes and Legume Products,56.44,234,21.28,12.77,8.51,4.3,0.00,1.00,400,300
43441,"Rolls, pumpernickel",Baked Products,32.00,277,10.80,2.80,52.80,5.4,0.40,2.53,492,208
43449,"Beans, baked, canned, no salt added",Legumes and Legume Products,72.60,105,4.80,0.40,20.49,5.5,7.78,1.71,1,296
43476,Tofu yogurt,Legumes and Legume Products,77.50,94,3.50,1.80,15.96,0.2,1.24,1.24,35,47
43483,"Millet, puffed",Breakfast Cereals,2.50,354,13.00,3.40,80.00,2.7,0.55,1.56,5,40
43497,"Jellyfish, dried, salted",Finfish and Shellfish Products,68.00,36,5.50,1.40,0.00,0.0,0.00,25.10,9690,3
43584,"Cereals ready-to-eat, amaranth flakes",Breakfast Cereals,3.00,353,15.54,7.00,71.15,9.5,0.42,3.27,35,353
43589,"Cheese, swiss, low fat",Dairy and Egg Products,59.60,179,28.40,5.10,3.40,0.0,1.33,3.50,199,111
43598,"Mayonnaise dressing, no cholesterol",Fats and Oils,21.70,688,0.00,77.80,0.30,0.0,0.30,0.40,486,14
44005,"Oil, corn, peanut, and olive",Fats and Oils,0.00,884,0.00,100.00,0.00,0.0,0.00,0.00,0,0
44018,"Sweeteners, tabletop, fructose, liquid",Sweets,23.90,279,0.00,0.00,76.10,0.1,76.00,0.00,2,0
44055,"Celery flakes, dried",Vegetables and Vegetable Products,9.00,319,11.30,2.10,63.70,27.8,35.90,13.90,1435,4388
44110,"Jellies, reduced sugar, home preserved",Sweets,53.00,179,0.30,0.03,46.10,0.8,45.30,0.08,2,71
44158,"Pie fillings, blueberry, canned",Sweets,54.66,181,0.41,0.20,44.38,2.6,37.75,0.35,12,115
48052,Vital wheat gluten,Cereal Grains and Pasta,8.20,370,75.16,1.85,13.79,0.6,0.00,1.00,29,100
80200,"Frog legs, raw",Finfish and Shellfish Products,81.90,73,16.40,0.30,0.00,0.0,0.00,1.40,58,285
83110,"Fish, mackerel, salted",Finfish and Shellfish Products,43.00,305,18.50,25.10,0.00,0.0,0.00,13.40,4450,520
90240,"Mollusks, scallop, (bay and sea), cooked, steamed",Finfish and Shellfish Products,70.25,111,20.54,0.84,5.41,0.0,0.00,2.97,667,314
90480,"Syrup, cane",Sweets,26.00,269,0.00,0.00,73.14,0.0,73.20,0.86,58,63
90560,"Mollusks, snail, raw",Finfish and Shellfish Products,79.20,90,16.10,1.40,2.00,0.0,0.00,1.30,70,382
93600,"Turtle, green, raw",Finfish and Shellfish Products,78.50,89,19.80,0.50,0.00,0.0,0.00,1.20,68,230`;

/** CSV: number of the food, amount, measure, g that this weighs. */
export const SR26_MEASURES_CSV = String.raw`01001,1,"pat (1"" sq, 1/3"" high)",5.0
01001,1,tbsp,14.2
01001,1,cup,227
01001,1,stick,113
01002,1,"pat (1"" sq, 1/3"" high)",3.8
01002,1,tbsp,9.4
01002,1,cup,151
01002,1,stick,76
01003,1,tbsp,12.8
01003,1,cup,205
01004,1,"cup, crumbled, not packed",135
01005,1,"cup, diced",132
01005,1,"cup, shredded",113
01005,1,slice (1 oz),28
01006,1,"cup, sliced",144
01006,1,"cup, melted",240
01006,1,package (4.5 oz),128
01007,1,cup,246
01007,1,wedge (1.33 oz),38
01009,1,"cup, diced",132
01009,1,"cup, melted",244
01009,1,"cup, shredded",113
01009,1,slice (1 oz),28
01011,1,"cup, diced",132
01011,1,"cup, shredded",113
01011,1,slice (1 oz),28
01012,1,"cup, large curd (not packed)",210
01012,1,"cup, small curd (not packed)",225
01013,1,cup (not packed),226
01014,1,cup (not packed),145
01015,1,cup (not packed),226
01016,1,cup (not packed),226
01017,1,tbsp,14.5
01017,1,cup,232
01017,1,"tbsp, whipped",10.0
01017,1,"package, small (3 oz)",85
01018,1,package (7 oz),198
01019,1,"cup, crumbled",150
01019,1,wedge (1.33 oz),38
01020,1,"cup, diced",132
01020,1,"cup, shredded",108
01020,1,slice (1 oz),28
01020,1,package (8 oz),227
01021,1,package (8 oz),227
01022,1,package (7 oz),198
01023,1,"cup, diced",132
01023,1,"cup, shredded",108
01023,1,slice (1 oz),28
01023,1,package (6 oz),170
01024,1,cup,134
01024,1,box,113
01024,1,package (8 oz),227
01025,1,"cup, diced",132
01025,1,"cup, shredded",113
01025,1,slice (1 oz),28
01025,1,package (6 oz),170
01026,1,"cup, shredded",112
01026,6,slices,170
01029,1,"cup, diced",132
01029,1,"cup, shredded",113
01029,1,slice (1 oz),28
01030,1,"cup, diced",132
01030,1,"cup, shredded",113
01030,1,slice (1 oz),28
01030,1,package (6 oz),170
01031,1,package (3 oz),85
01032,1,cup,100
01032,1,tbsp,5.0
01033,5,package (5 oz),142
01034,1,"cup, diced",132
01034,1,"cup, shredded",113
01034,1,slice (1 oz),28
01034,1,package (6 oz),170
01035,1,"cup, diced",132
01035,1,slice (1 oz),28
01035,1,package (6 oz),170
01036,.5,cup,124
01036,1,cup,246
01037,.5,cup,124
01037,1,cup,246
01038,5,package (5 oz),142
01039,1,package (3 oz),85
01040,1,"cup, diced",132
01040,1,"cup, melted",244
01040,1,"cup, shredded",108
01040,1,slice (1 oz),28
01041,1,package (6 oz),170
01043,1,"cup, diced",140
01043,1,"cup, melted",244
01043,1,"cup, shredded",113
01043,1,slice (3/4 oz),21
01044,1,"cup, diced",140
01044,1,"cup, shredded",113
01044,1,slice (3/4 oz),21
01047,1,package (8 oz),227
01049,1,fl oz,30.2
01049,1,tbsp,15.0
01049,1,cup,242
01049,1,"container, individual (.5 fl oz)",15.0
01050,1,fl oz,30.0
01050,1,tbsp,15.0
01050,1,cup,240
01050,1,"container, individual",11.1
01052,1,"cup, whipped",120
01052,1,"cup, fluid (yields 2 cups whipped)",239
01052,1,tbsp,15.0
01053,1,"cup, whipped",120
01053,1,"cup, fluid (yields 2 cups whipped)",238
01053,1,tbsp,15.0
01053,1,fl oz,29.8
01054,1,cup,60
01054,1,tbsp,3.0
01055,1,tbsp,15.0
01055,1,cup,242
01056,1,tbsp,12.0
01056,1,cup,230
01057,1,cup,254
01057,1,fl oz,31.8
01057,1,quart,1016
01069,1,cup,94
01069,1,tsp,2.0
01069,1,packet,3.0
01077,1,cup,244
01077,1,fl oz,30.5
01077,1,tbsp,15
01077,1,quart,976
01078,1,cup,244
01078,1,quart,976
01079,1,cup,244
01079,1,fl oz,30.5
01079,1,quart,976
01082,1,cup,244
01082,1,fl oz,30.5
01082,1,quart,976
01085,1,cup,245
01085,1,fl oz,30.6
01085,1,quart,980
01088,1,cup,245
01088,1,fl oz,30.6
01088,1,quart,980
01090,1,cup,128
01090,.25,cup,32
01091,1,cup,120
01091,.25,cup,30
01092,1,cup,68
01092,1,envelope (1-1/3 cup),91
01092,.333,cup (makes 1 cup reconstituted milk),23
01094,1,cup,120
01094,1,tbsp,6.5
01095,1,fl oz,38.2
01095,1,cup,306
01096,1,fl oz,31.5
01096,1,cup,252
01096,1,can (13 oz),369
01096,.5,cup,126
01097,1,fl oz,31.9
01097,1,cup,256
01097,.5,cup,128
01102,1,cup,250
01102,1,fl oz,31.2
01102,1,quart,1000
01103,1,cup,250
01103,1,fl oz,31.2
01103,1,quart,1000
01104,1,cup,250
01104,1,quart,1000
01106,1,fl oz,30.5
01106,1,cup,244
01106,1,quart,976
01108,1,cup,244
01108,1,quart,976
01109,1,cup,245
01109,1,quart,980
01112,1,cup,246
01112,1,quart,984
01113,1,cup,57
01113,1,tbsp,2.9
01114,1,cup,246
01114,1,quart,984
01115,1,cup,145
01115,1,tbsp,7.5
01116,1,container (6 oz),170
01116,1,container (8 oz),227
01116,.5,container (4 oz),113
01116,1,cup (8 fl oz),245
01117,1,container (6 oz),170
01117,1,container (8 oz),227
01117,.5,container (4 oz),113
01117,1,cup (8 fl oz),245
01118,1,container (6 oz),170
01118,1,container (8 oz),227
01118,1,cup (8 fl oz),245
01119,1,container (6 oz),170
01119,1,container (8 oz),227
01119,1,cup (8 fl oz),245
01120,1,container (6 oz),170
01120,1,container (4.4 oz),125
01120,1,container (5 oz),142
01120,1,cup (8 fl oz),245
01120,1,container (8 oz),227
01120,.5,container (4 oz),113
01121,1,container (6 oz),170
01121,1,cup (8 fl oz),245
01121,1,container (8 oz),227
01121,.5,container (4 oz),113
01122,1,container (6 oz),170
01122,.5,container (4 oz),113
01122,1,container (8 oz),227
01123,1,large,50
01123,1,extra large,56
01123,1,jumbo,63
01123,1,cup (4.86 large eggs),243
01123,1,medium,44
01123,1,small,38
01124,1,large,33
01124,1,cup,243
01125,1,large,17
01125,1,cup,243
01128,1,large,46
01129,1,"cup, chopped",136
01129,1,tbsp,8.5
01129,1,large,50
01130,1,tbsp,15
01130,1,large,61
01131,1,large,50
01132,1,large,61
01132,1,tbsp,13.7
01132,1,cup,220
01133,1,"cup, sifted",85
01133,1,tbsp,5.0
01134,1,"cup, sifted",85
01134,1,tbsp,5.0
01136,1,"cup, sifted",107
01136,1,tbsp,7.0
01137,1,"cup, sifted",67
01137,1,tbsp,4.0
01138,1,egg,70
01139,1,egg,144
01140,1,egg,9.0
01141,1,egg,79
01145,1,"pat (1"" sq, 1/3"" high)",5.0
01145,1,tbsp,14.2
01145,1,cup,227
01145,1,stick,113
01146,1,tbsp,5.0
01151,1,cup,245
01151,1,quart,980
01153,1,fl oz,31.5
01153,.5,cup,126
01154,1,cup,120
01154,.25,cup,30
01155,1,cup,68
01155,1,envelope (1-1/3 cup),91
01161,1,"cup, shredded",113
01161,1,slice,28
01164,2,tbsp,30
01164,1,cup,243
01165,1,"cup, crumbled",132
01166,1,"cup, diced",132
01166,1,"cup, shredded",113
01166,1,slice (1 oz),28
01167,1,"cup, diced",132
01167,1,"cup, shredded",113
01167,1,slice (1 oz),28
01168,1,"cup, diced",132
01168,1,"cup, shredded",113
01168,1,slice (1 oz),28
01174,1,cup,246
01174,1,quart,984
01175,1,cup,244
01175,1,quart,976
01178,1,tablespoon,12.0
01178,1,cup,230
01179,1,tablespoon,12.0
01179,1,cup,230
01180,1,tablespoon,12.0
01180,1,cup,230
01185,1,tablespoon,5.0
01186,1,tbsp,18
01187,1,container (6 oz),170
01199,2,tbsp,29
01199,1,pint,484
01202,1,cup,250
01202,1,fl oz,31.2
01202,1,quart,1000
01204,1,cup,100
01204,1,tbsp,5.0
01208,1,"cup, diced",132
01208,1,"cup, shredded",113
01208,1,slice (1 oz),28
01208,1,package (6 oz),170
01209,.25,cup,28
01211,1,cup,244
01211,1,tbsp,15
01211,1,fl oz,30.5
01211,1,quart,976
01212,1,cup,128
01212,.25,cup,32
01214,1,cup,252
01214,1,fl oz,31.5
01214,1,can (13 oz),369
01214,.5,cup,126
01225,1,tbsp,19
01227,1,cup grated,97
01228,1,cup crumbled,122
01229,1,cup crumbled,118
01230,1,cup,245
01251,.25,cup shredded,28
01256,1,container,170
01258,1,"cup, sifted",107
01258,1,tbsp,7.0
01260,1,slice,21
01267,2,tsp,5.0
02001,1,tsp,1.9
02001,1,tbsp,6.0
02002,1,"tsp, whole",2.1
02002,1,"tbsp, whole",6.7
02003,1,"tsp, leaves",0.7
02003,1,"tbsp, leaves",2.1
02003,1,"tsp, ground",1.4
02003,1,"tbsp, ground",4.5
02004,1,"tsp, crumbled",0.6
02004,1,"tbsp, crumbled",1.8
02005,1,tsp,2.1
02005,1,tbsp,6.7
02006,1,"tsp, ground",2.0
02006,1,"tbsp, ground",5.8
02007,1,tsp,2.0
02007,1,tbsp,6.5
02008,1,tsp,0.6
02008,1,tbsp,1.9
02009,1,tsp,2.7
02009,1,tbsp,8.0
02010,1,tsp,2.6
02010,1,tbsp,7.8
02011,1,tsp,2.1
02011,1,tbsp,6.5
02012,1,tsp,0.6
02012,1,tbsp,1.8
02013,1,tsp,1.8
02013,1,tbsp,5.0
02014,1,"tsp, whole",2.1
02014,1,"tbsp, whole",6.0
02015,1,tsp,2.0
02015,1,tbsp,6.3
02016,1,tsp,2.1
02016,1,tbsp,6.6
02017,1,tsp,1.0
02017,1,tbsp,3.1
02018,1,"tsp, whole",2.0
02018,1,"tbsp, whole",5.8
02019,1,tsp,3.7
02019,1,tbsp,11.1
02020,1,tsp,3.1
02020,1,tbsp,9.7
02021,1,tsp,1.8
02021,1,tbsp,5.2
02022,1,tsp,1.7
02022,1,tbsp,5.3
02023,1,tsp,0.6
02023,1,tbsp,1.7
02024,1,tsp,2.0
02024,1,tbsp,6.3
02025,1,tsp,2.2
02025,1,tbsp,7.0
02026,1,tsp,2.4
02026,1,tbsp,6.9
02027,1,"tsp, leaves",1.0
02027,1,"tsp, ground",1.8
02028,1,tsp,2.3
02028,1,tbsp,6.8
02029,1,tsp,0.5
02029,1,tbsp,1.6
02030,1,"tsp, ground",2.3
02030,1,"tbsp, ground",6.9
02030,1,"tsp, whole",2.9
02030,1,dash,0.1
02031,1,tsp,1.8
02031,1,tbsp,5.3
02032,1,"tsp, ground",2.4
02032,1,"tbsp, ground",7.1
02033,1,tsp,2.8
02033,1,tbsp,8.8
02034,1,tsp,1.5
02034,1,tbsp,4.4
02035,1,tsp,1.7
02035,1,tbsp,5.6
02036,1,tsp,1.2
02036,1,tbsp,3.3
02037,1,tsp,0.7
02037,1,tbsp,2.1
02038,1,tsp,0.7
02038,1,tbsp,2.0
02039,1,tsp,1.4
02039,1,tbsp,4.4
02041,1,"tsp, leaves",0.6
02041,1,"tbsp, leaves",1.8
02041,1,"tsp, ground",1.6
02041,1,"tbsp, ground",4.8
02042,1,"tsp, leaves",1.0
02042,1,"tbsp, leaves",2.7
02042,1,"tsp, ground",1.4
02042,1,"tbsp, ground",4.3
02043,1,tsp,3.0
02043,1,tbsp,9.4
02044,5,leaves,2.5
02044,2,"tbsp, chopped",5.3
02044,.25,"cup leaves, whole",6.0
02045,5,sprigs,1.0
02045,1,cup sprigs,8.9
02046,1,tsp or 1 packet,5.0
02046,1,cup,249
02047,1,tsp,6.0
02047,1,tbsp,18
02047,1,cup,292
02047,1,dash,0.4
02048,1,tbsp,14.9
02048,1,cup,239
02048,1,tsp,5.0
02049,1,tsp,0.8
02049,.5,tsp,0.4
02050,1,tsp,4.2
02050,1,tbsp,13.0
02050,1,cup,208
02053,1,tbsp,14.9
02053,1,cup,238
02053,1,tsp,5.0
02054,1,"tbsp, drained",8.6
02055,1,tsp,5.0
02055,1,tbsp,15.0
02063,1,tsp,0.7
02063,1,tbsp,1.7
02064,2,leaves,0.1
02064,2,tbsp,3.2
02065,2,leaves,0.3
02065,2,tbsp,11.4
02066,1,tsp,0.5
02066,1,tbsp,1.6
02068,1,tbsp,14.9
02068,1,cup,239
02068,1,tsp,5.0
02069,1,tbsp,16
02069,1,cup,255
02069,1,tsp,5.3
02074,.25,tsp,1.0
02075,2,tsp,5.7
02076,1.33,tbsp,9.0
04001,1,tbsp,12.8
04001,1,cup,205
04002,1,tbsp,12.8
04002,1,cup,205
04016,1,tablespoon,15
04016,1,cup,245
04018,1,tbsp,14.7
04018,1,cup,235
04025,1,tbsp,13.8
04025,1,cup,220
04025,1,packet,10.0
04026,1,tablespoon,13.8
04026,1,cup,220
04031,1,tbsp,12.8
04031,1,cup,205
04034,1,tbsp,13.6
04034,1,cup,218
04034,1,tsp,4.5
04037,1,tablespoon,13.6
04037,1,cup,218
04037,1,tsp,4.5
04038,1,tablespoon,13.6
04038,1,cup,218
04038,1,tsp,4.5
04042,1,tbsp,13.5
04042,1,cup,216
04042,1,tsp,4.5
04044,1,tbsp,13.6
04044,1,cup,218
04044,1,tsp,4.5
04047,1,tbsp,13.6
04047,1,cup,218
04047,1,tsp,4.5
04053,1,tablespoon,13.5
04053,1,cup,216
04053,1,tsp,4.5
04055,1,tbsp,13.6
04055,1,cup,216
04055,1,tsp,4.5
04058,1,tablespoon,13.6
04058,1,cup,218
04058,1,tsp,4.5
04060,1,tbsp,13.6
04060,1,cup,218
04060,1,tsp,4.5
04073,1,tsp,4.7
04073,1,stick,113
04114,1,tbsp,14.7
04114,1,cup,235
04120,1,tbsp,16
04120,1,cup,250
04133,1,tablespoon,14.0
04133,1,cup,220
04135,1,tablespoon,16
04135,1,cup,250
04141,1,tablespoon,15.0
04143,1,tablespoon,14.7
04143,1,cup,235
04145,1,tablespoon,13.8
04145,1,cup,220
04146,1,tablespoon,14.0
04146,1,cup,220
04501,1,tablespoon,13.6
04501,1,cup,218
04501,1,tsp,4.5
04502,1,tablespoon,13.6
04502,1,cup,218
04502,1,tsp,4.5
04506,1,tbsp,13.6
04506,1,cup,218
04506,1,tsp,4.5
04510,1,tbsp,13.6
04510,1,cup,218
04510,1,tsp,4.5
04511,1,tablespoon,13.6
04511,1,cup,218
04511,1,tsp,4.5
04513,1,tablespoon,13.6
04513,1,cup,218
04513,2,tbsp (1/8 cup),27
04514,1,tablespoon,13.6
04514,1,cup,218
04514,1,tsp,4.5
04517,1,tablespoon,13.6
04517,1,cup,218
04517,1,tsp,4.5
04520,1,tbsp,12.8
04520,1,cup,205
04528,1,tbsp,13.6
04528,1,cup,218
04528,1,tsp,4.5
04529,1,tablespoon,13.6
04529,1,cup,218
04529,1,tsp,4.5
04531,1,tablespoon,13.6
04531,1,cup,218
04531,1,tsp,4.5
04532,1,tablespoon,13.6
04532,1,cup,218
04532,1,tsp,4.5
04539,1,tbsp,15
04539,1,cup,245
04542,1,tbsp,12.8
04542,1,cup,205
04543,1,tablespoon,13.6
04543,1,cup,218
04543,1,tsp,4.5
04544,1,tablespoon,12.8
04544,1,cup,205
04545,1,tbsp,13.6
04545,1,cup,218
04545,1,tsp,4.5
04559,1,tbsp,12.8
04559,1,cup,205
04574,1,tbsp,12.8
04574,1,cup,205
04575,1,tbsp,12.8
04575,1,tsp,4.3
04575,1,cup,205
04576,1,tbsp,12.8
04576,1,cup,205
04581,1,tbsp,14.0
04581,1,cup,218
04581,1,tsp,4.5
04582,1,tbsp,14.0
04582,1,cup,218
04582,1,tsp,4.5
04583,1,tbsp,14.0
04583,1,cup,218
04583,1,tsp,4.5
04584,1,tbsp,14.0
04584,1,cup,218
04584,1,tsp,4.5
04588,1,tbsp,13.6
04588,1,cup,218
04588,1,tsp,4.5
04589,1,tbsp,13.6
04589,1,tsp,4.5
04589,1,cup,218
04590,1,tbsp,13.6
04590,1,tsp,4.5
04590,1,cup,218
04593,1,tbsp,13.6
04593,1,tsp,4.5
04593,1,cup,218
04594,1,tbsp,13.6
04594,1,tsp,4.5
04594,1,cup,218
04606,1,tablespoon,12.8
04609,1,tsp,4.3
04610,1,tbsp,14.0
04610,1,cup,227
04610,1,tsp,4.7
04610,1,"pat (1"" sq, 1/3"" high)",5.0
04610,1,stick,113
04611,1,tbsp,14.2
04611,1,cup,227
04615,1,tbsp,12.8
04615,1,cup,205
04617,1,tbsp,14.2
04617,1,cup,227
04617,1,"pat (1"" sq, 1/3"" high)",5.0
04617,1,stick,113
04618,1,tbsp,14.2
04618,1,cup,227
04628,1,tbsp,14.0
04630,1,tbsp,14.0
04639,1,tablespoon,15.0
04691,1,tablespoon,14.0
04691,1,cup,227
04691,1,teaspoon,4.0
04692,1,tbsp,14.0
04696,1,tbsp,14.0
04696,1,cup,229
04696,1,teaspoon,4.8
04707,1,tablespoon,13.7
04707,1,cup,219
05006,.5,"chicken, bone removed",460
05007,.5,"chicken, bone removed",466
05008,.5,"chicken, bone removed",314
05009,1,"cup, chopped or diced",140
05009,.5,"chicken, bone removed",299
05010,1,"cup, chopped or diced",140
05010,.5,"chicken, bone removed",334
05011,.5,"chicken, bone and skin removed",329
05012,1,"cup, chopped or diced",140
05012,.5,"chicken, bone and skin removed",258
05013,1,"cup, chopped or diced",140
05013,1,tbsp,8.7
05014,1,"cup, chopped or diced",140
05014,1,tbsp,8.7
05015,.5,"chicken, skin only",79
05016,.5,"chicken, skin only",190
05017,.5,"chicken, skin only",56
05018,.5,"chicken, skin only",56
05019,.5,"chicken, skin only",72
05024,1,cup chopped or dice,145
05025,1,heart,6.1
05026,1,"cup, chopped or diced",145
05027,1,liver,44
05028,1,liver,44
05029,.5,"chicken, bone removed",194
05030,.5,"chicken, bone removed",188
05031,.5,"chicken, bone removed",130
05032,.5,"chicken, bone removed",132
05033,.5,"chicken, bone removed",150
05034,.5,"chicken, bone removed",266
05035,.5,"chicken, bone removed",278
05036,.5,"chicken, bone removed",184
05037,.5,"chicken, bone removed",167
05038,.5,"chicken, bone removed",184
05039,.5,"chicken, bone and skin removed",147
05040,1,cup,140
05041,1,"cup, chopped or diced",140
05041,.5,"chicken, bone and skin removed",107
05042,1,"cup, chopped or diced",140
05042,.5,"chicken, bone and skin removed",119
05043,.5,"chicken, bone and skin removed",182
05044,1,cup,140
05045,1,"cup, chopped or diced",140
05045,.5,"chicken, bone and skin removed",136
05046,1,"cup, chopped or diced",140
05046,.5,"chicken, bone and skin removed",143
05057,.5,"breast, bone removed (yield from 1 lb ready-to-cook chicken)",87
05057,.5,"breast, bone removed",145
05058,.5,"breast, bone removed",140
05059,.5,"breast, bone removed",98
05060,1,"cup, chopped or diced",140
05060,.5,"breast, bone removed",98
05061,1,"cup, chopped or diced",140
05061,.5,"breast, bone removed",110
05062,1,piece,272
05062,1,package,926
05063,.5,"breast, bone and skin removed",86
05064,1,"cup, chopped or diced",140
05064,.5,"breast, bone and skin removed",86
05065,1,"cup, chopped or diced",140
05065,.5,"breast, bone and skin removed",95
05066,1,drumstick with skin,133
05066,1,drumstick,130
05067,1,"drumstick, bone removed",72
05068,1,"drumstick, bone removed",49
05069,1,drumstick with skin (yield from 1 lb ready-to-cook chicken),105
05069,1,drumstick without skin,96
05070,1,"cup, chopped or diced",140
05070,1,"drumstick, bone removed",57
05071,1,drumstick  with skin,130
05071,1,drumstick without skin,122
05072,1,"drumstick, bone and skin removed",42
05073,1,drumstick without skin,96
05073,1,drumstick with skin,105
05074,1,"drumstick, bone and skin removed",46
05074,1,"cup, chopped or diced",160
05075,1,"leg, with skin (Sum of drumstick+thigh+back)",344
05075,1,drumstick with skin,111
05075,1,thigh with skin,185
05075,1,back with skin,49
05076,1,"leg, bone removed",158
05077,1,"leg, bone removed",112
05078,1,"leg, with skin (Sum of drumstick+thigh+back)",258
05078,1,thigh with skin,133
05078,1,drumstick with skin,91
05078,1,back with skin,35
05079,1,"cup, chopped or diced",140
05079,1,"leg, bone removed",125
05080,1,"leg, bone and skin removed (Sum of drumstick+thigh+back meat only)",265
05080,1,thigh bone and skin removed,147
05080,1,drumstick bone and skin removed,88
05080,1,back bone and skin removed,30
05081,1,"leg, bone and skin removed",94
05082,1,leg bone and skin r (Sum of drumstick+thigh+back meat only),199
05082,1,drumstick bone and skin r,105
05082,1,thigh bone and skin r,72
05082,1,back bone and skin r,22
05083,1,"cup, chopped or diced",160
05083,1,"leg, bone and skin removed",101
05091,1,thigh without skin (yield from 1 lb ready-to-cook chicken),149
05091,1,thigh with skin,193
05092,1,"thigh, bone removed",86
05093,1,"thigh, bone removed",62
05094,1,thigh with skin,137
05094,1,thigh without skin,116
05095,1,"thigh, bone removed",68
05096,1,thigh,193
05096,1,thigh with skin,189
05097,1,"thigh, bone and skin removed",52
05098,1,thigh without skin,116
05098,1,thigh with skin,137
05099,1,"cup, chopped or diced",140
05099,1,"thigh, bone and skin removed",55
05100,1,piece,107
05100,1,package,1150
05101,1,"wing, bone removed",49
05102,1,"wing, bone removed",32
05103,1,piece,85
05104,1,"cup, chopped or diced",140
05104,1,"wing, bone removed",40
05105,1,"wing, bone and skin removed (yield from 1 lb ready-to-cook chicken)",17
05105,1,"wing, bone and skin removed",29
05106,1,"wing, bone and skin removed",20
05107,1,"wing, bone and skin removed",21
05108,1,"cup, chopped or diced",140
05108,1,"wing, bone and skin removed",24
05112,.5,"chicken, bone removed",480
05113,.5,"chicken, bone and skin removed",477
05114,1,"cup, chopped or diced",140
05117,.5,"chicken, bone and skin removed",220
05118,1,"cup, chopped or diced",140
05119,.5,"chicken, bone and skin removed",258
05120,1,"cup, chopped or diced",140
05123,.5,"chicken, bone removed",398
05124,.5,"chicken, bone removed",261
05125,.5,"chicken, bone and skin removed",284
05126,1,"cup, chopped or diced",140
05129,.5,"chicken, bone and skin removed",130
05130,1,"cup, chopped or diced",140
05131,.5,"chicken, bone and skin removed",154
05132,1,"cup, chopped or diced",140
05139,.5,duck,634
05140,1,"cup, chopped or diced",140
05140,.5,duck,382
05141,.5,duck,303
05142,1,"cup, chopped or diced",140
05142,.5,duck,221
05143,1,liver,44
05144,.5,duck,270
05145,.5,"breast, bone and skin removed",83
05146,.5,goose,1319
05147,1,"cup, chopped or diced",140
05147,.5,goose,774
05148,.5,goose,766
05149,.5,goose,591
05150,1,liver,94
05151,.5,guinea,345
05152,.5,guinea,264
05153,.5,pheasant,400
05154,.5,pheasant,352
05155,.5,"breast, bone and skin removed",182
05156,1,"leg, bone and skin removed",107
05157,1,quail,109
05158,1,quail,92
05159,1,breast,56
05160,1,squab,199
05161,1,squab,168
05162,1,"breast, bone removed",101
05165,1,bird,5002
05166,1,bird,3812
05167,1,bird,5002
05168,1,bird,3812
05173,1,raw gizzard,63
05174,1,gizzard cooked,45
05175,1,piece,24
05176,1,heart,20
05177,1,raw liver,78
05178,1,liver cooked,53
05191,.5,"breast, bone removed",1132
05192,.5,"breast, bone removed",864
05193,1,"leg, bone removed",816
05194,1,"leg, bone removed",546
05195,1,"wing, bone removed",256
05196,1,"wing, bone removed",186
05219,1,breast,1769
05220,1,breast,1413
05227,1,wing,346
05228,1,wing,213
05236,.5,"turkey, skin only",196
05277,1,can (5 oz),142
05282,1,tbsp,13.0
05284,1,"cup, drained",135
05284,1,can (5 oz),142
05284,1,can (5 oz) yields,125
05286,1,"package (net weight, 5 oz)",142
05292,1,"medium slice (approx 3"" x 2"" x 1/4"")",28
05292,1,"thick slice (approx 3"" x 2"" x 3/8"")",42
05292,1,patty (2.25 oz),64
05292,1,patty (3.33 oz),94
05293,.5,"breast, bone removed",864
05294,1,"thigh, bone removed",314
05295,1,"box (net weight, 2.5 lb)",1134
05296,1,"cup, chopped or diced",135
05296,1,"box (net weight, 1.72 lb)",782
05296,.25,"box (net weight, 0.43 lb)",196
05300,1,stick (2.25 oz),64
05305,1,"patty, 4 oz",114
05306,1,"patty (4 oz, raw) (yield after cooking)",82
05307,.5,bird,168
05308,.5,bird,129
05308,1,bird whole,257
05309,.5,bird,120
05309,1,bird whole,239
05310,.5,bird,110
05310,1,bird whole,220
05311,1,cup,205
05311,1,can (5 oz) yields,125
05312,1,piece,29
05315,.5,"breast, bone removed",120
05316,.5,"breast, bone and skin removed",95
05316,1,"cup, chopped or diced",174
05317,1,"leg, bone removed (yield after cooking)",92
05318,1,"cup chopped or diced, cooked",174
05318,1,"leg, bone and skin removed",75
05323,1,patty,60
05324,1,patty,60
05326,1,piece,15.0
05326,4,pieces,62
05342,1,breast,343
05343,1,drumstick,53
05345,1,thigh,89
05346,1,wing,53
05348,1,breast,343
05349,1,drumstick,53
05351,1,thigh,89
05352,1,wing,53
05621,1,patty,117
05622,1,patty (yield from 135.8 g raw meat),109
05623,1,fan fillet,513
05624,1,steak,394
05625,1,flat fillet,354
05626,1,full rump,695
05627,1,full rump cooked ( yield from 695 g raw meat ),496
05628,1,inside drum,572
05629,1,inside drum cooked ( yield from 572 g raw meat ),416
05630,1,outside drum,422
05631,1,steak,300
05632,1,steak,244
05641,1,patty,109
05641,4,patty,435
05642,1,patty,93
05661,1,liver,44
05662,1,patty (cooked from 4 oz raw),85
05664,1,patty,85
05668,1,patty (cooked from 4 oz raw),85
05671,1,drumstick without skin,95
05671,1,drumstick with skin,105
05672,1,thigh without skin,111
05672,1,thigh with skin,129
05676,1,drumstick without skin,95
05676,1,drumstick with skin,105
05677,1,thigh without skin,111
05677,1,thigh with skin,129
05710,1,breast,1150
05711,1,breast,863
05712,1,wing,518
05713,1,wing,375
05716,1,drumstick,356
05717,1,thigh,454
05722,1,thigh,348
05723,1,drumstick,275
05732,1,breast,1150
05733,1,breast,863
05734,1,wing,518
05735,1,wing,375
05736,1,drumstick,356
05737,1,drumstick,275
05738,1,drumstick,337
05739,1,drumstick,206
05740,1,thigh,367
05741,1,thigh,319
05742,1,thigh,454
05743,1,thigh,348
05746,1,piece,181
05747,1,piece,196
07001,1,"slice (5-7/8"" x 3-1/2"" x 1/16"")",23
07003,1,"slice (4"" dia x 1/8"" thick)",23
07003,1,"slice (2-3/4"" dia x 1/16"")",6.0
07004,1,slice,23
07005,4,slices,100
07006,1,sausage,91
07007,1,slice,30
07010,1,"slice, medium (4-1/2"" dia x 1/8"" thick) (1 oz)",28
07010,1,"slice (4"" dia x 1/8"" thick)",23
07011,1,package,454
07013,1,link cooked,85
07014,1,"slice (2-1/2"" dia x 1/4"" thick)",18
07015,1,link,70
07016,2.33,links,100
07017,2,slices (1 serving),57
07017,1,package,170
07017,3.53,slices,100
07019,1,"link (4"" long)",60
07020,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07020,2,slices,57
07021,1,slice,38
07022,1,frankfurter,50
07022,1,package,446
07023,1,frankfurter,45
07024,1,link,45
07025,1,frankfurter,45
07026,1,"slice (4-1/4"" x 4-1/4"" x 1/16"")",21
07027,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07027,1,"slice (4-1/4"" x 4-1/4"" x 1/16"")",21
07029,56,grams 1 serving,56
07029,1,slice,28
07030,1,"slice (4-1/4"" x 4-1/4"" x 1/16"")",21
07031,1,tbsp,15.0
07032,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07032,2,slices,57
07033,1,tbsp,15.0
07034,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07036,1,"link, 4/lb",113
07036,1,"link, 5/lb",91
07037,1,link,75
07037,1,ring,467
07038,1,link,72
07040,1,slice,38
07041,1,"slice (2-1/2"" dia x 1/4"" thick)",18
07042,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07042,2,slices,57
07043,1,slice oval,9.3
07043,1,slice rectangle,13.8
07045,1,"slice (4-1/4"" x 4-1/4"" x 1/16"")",21
07046,1,slice,28
07046,1,slice NFS,28
07046,1,cup wafer slices or shaved,81
07050,1,slice (15 per 8 oz package),15.0
07051,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07051,2,slices,57
07052,2,slices,57
07052,1,package (8 oz),227
07053,1,tbsp,13.0
07054,1,tbsp,13.0
07055,1,tbsp,13.0
07056,3.52,slices,100
07057,1,slice round,2.0
07058,1,slice,38
07058,2,slices,57
07059,1,"sausage (10"" long x 1-1/4"" dia)",227
07060,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07060,2,slices,57
07062,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
07062,2,slices,57
07063,1,link,25
07064,1,patty,27
07064,1,link,23
07065,1,"link (raw dimensions: 4"" long x 7/8"" dia), cooked",13.0
07065,1,"patty, cooked (raw dimensions: 3-7/8"" dia x 1/4"" thick)",27
07067,1,tbsp,13.0
07068,1,slice,26
07069,1,slice round,12.3
07071,1,package (4 oz),113
07071,1,"slice (3-1/8"" dia x 1/16"" thick)",10.0
07072,1,slice,9.8
07072,3,slices 1 serving,27
07073,1,tbsp,15.0
07074,1,"link (4"" long x 1-1/8"" dia)",68
07074,1,"link, little (2"" long x 3/4"" dia)",16
07076,1,"link (4"" long x 1-1/8"" dia)",68
07076,1,"link, little (2"" long x 3/4"" dia)",16
07077,1,"link (4"" long x 1-1/8"" dia)",68
07077,1,"link,  little (2"" long x 3/4"" dia)",16
07079,1,"slice (3-1/2"" square; 8 per 6 oz package)",21
07081,1,slice,15
07082,2,slices,57
07083,1,"sausage (7/8"" dia x 2"" long)",16
07083,7,"sausages (drained contents from can, net wt 4 oz)",113
07088,1,"slice (4"" dia x 1/8"" thick)",23
07089,1,"link, 4/lb",83
07089,1,"link, 5/lb",67
07090,1,"slice (4"" dia x 1/8"" thick)",23
07091,1,"slice (4"" dia x 1/8"" thick)",23
07911,.25,cup,55
07914,1,link 3 oz,84
07915,5,pieces,55
07928,1,link,84
07939,1,link,76
07940,1,slice,38
07945,1,frankfurter,48
07945,1,package,451
07952,1,slice,28
07953,1,patty,30
07953,1,link,21
07959,1,slice,28
07960,1,slice,28
07961,1,slice,12.0
07962,1,frankfurter 1,51
07963,1,frankfurter 1,50
07964,1,frankfurter 1,48
07967,1,link,23
07967,1,patty,37
07968,1,link,367
07969,1,link,370
07970,1,link,396
07971,1,slice,33
08022,1,cup,25
08037,1,cup,122
08084,1,cup,113
08090,1,tbsp,9.7
08090,1,cup,156
08091,1,cup,257
08091,1,tbsp,16
08113,1,cup,240
08113,1,tbsp,15.0
08120,1,cup,81
08120,.333,cup,27
08121,1,cup,234
08121,1,tbsp,14.6
08121,.75,cup,175
08122,1,packet,28
08123,1,"cup, cooked",234
08123,1,"cup, dry, yields",501
08123,1,"packet, dry, yields",177
08128,1,packet,45
08129,1,cup,240
08129,1,tbsp,15.0
08129,1,"packet, prepared",161
08132,1,packet,44
08133,1,cup,240
08133,1,tbsp,15.0
08133,1,"packet, prepared",158
08144,1,cup,94
08144,.333,cup,31
08145,1,cup,242
08145,.75,cup,182
08156,1,cup,14.0
08157,1,cup,12.0
08159,1,cup,170
08160,1,tbsp,9.7
08160,1,cup,156
08161,1,cup,257
08161,1,tablespoon,16
08164,1,cup,233
08165,1,cup,233
08172,1,tbsp,10.9
08172,1,cup,176
08173,1,cup,233
08183,1,cup,242
08183,.75,cup,182
08204,1,cup,30
08580,1,tbsp,8.9
08580,1,cup,128
09001,1,cup,98
09001,1,fruit without refuse,4.8
09002,1,cup,242
09002,1,fl oz,30.2
09003,1,"cup, quartered or chopped",125
09003,1,cup slices,109
09003,1,"large (3-1/4"" dia)",223
09003,1,"medium (3"" dia)",182
09003,1,"small (2-3/4"" dia)",149
09003,1,"extra small (2-1/2"" dia)",101
09004,1,cup slices,110
09004,1,"large (3-1/4"" dia)",216
09004,1,"medium (3"" dia)",161
09004,1,"small (2-3/4"" dia)",132
09005,1,cup slices,171
09006,1,cup slices,170
09007,1,cup slices,204
09008,1,cup slices,204
09009,1,cup,60
09010,1,cup,193
09011,1,cup,86
09011,1,ring,6.4
09012,1,cup,255
09013,1,cup,280
09014,1,cup slices,173
09015,1,cup slices,206
09016,1,cup,248
09016,1,fl oz,31.0
09016,1,drink box (8.45 fl oz),262
09017,1,can (6 fl oz),211
09021,1,"cup, halves",155
09021,1,"cup, sliced",165
09021,1,apricot,35
09022,1,"cup, halves",243
09022,1,apricot half with liquid,36
09023,1,"cup, whole, without pits",227
09024,1,"cup, halves",244
09024,1,apricot half with liquid,36
09026,1,"cup, halves",253
09026,1,apricot half with liquid,40
09027,1,"cup, halves",258
09027,1,"cup, whole",240
09027,1,apricot half with liquid,40
09028,1,"cup, whole, without pits",258
09030,1,cup,119
09031,1,cup,249
09032,1,"cup, halves",130
09032,1,half,3.5
09033,1,"cup, halves",250
09034,1,"cup, halves",270
09035,1,cup,242
09036,1,cup,251
09036,1,fl oz,31.4
09037,1,"cup, cubes",150
09037,1,"cup, pureed",230
09037,1,"cup, sliced",146
09037,1,"avocado, NS as to Florida or California",201
09040,1,"cup, mashed",225
09040,1,"cup, sliced",150
09040,1,"extra small (less than 6"" long)",81
09040,1,"small (6"" to 6-7/8"" long)",101
09040,1,"medium (7"" to 7-7/8"" long)",118
09040,1,"large (8"" to 8-7/8"" long)",136
09040,1,"extra large (9"" or longer)",152
09041,1,cup,100
09041,1,tbsp,6.2
09042,1,cup,144
09043,1,cup,250
09044,.25,cup,40
09046,1,cup,256
09048,1,"cup, unthawed",151
09048,1,package (18 oz),510
09050,1,cup,148
09050,50,berries,68
09052,1,cup,256
09053,1,"cup, frozen",140
09054,1,"cup, unthawed",155
09054,1,package (20 oz),567
09055,1,"cup, thawed",230
09055,1,package (10 oz),284
09056,1,cup,256
09057,1,"cup, unthawed",132
09057,1,package (10 oz),284
09059,1,cup,220
09059,.25,"fruit, small",96
09060,1,"cup, cubes",132
09060,1,"cup, sliced",108
09060,1,"large (4-1/2"" long)",124
09060,1,"medium (3-5/8"" long)",91
09060,1,"small (3-1/8"" long)",70
09061,1,cup slices,150
09061,1,fruit without skin and seeds,20
09062,1,"cup, pieces",160
09062,1,fruit without skin and seeds,235
09063,1,"cup, without pits",155
09063,1,"cup, with pits, yields",103
09065,1,cup,252
09066,1,cup,256
09068,1,"cup, unthawed",155
09068,1,package (18 oz),510
09070,1,"cup, with pits, yields",138
09070,1,"cup, without pits",154
09070,1,cherry,8.2
09071,1,"cup, pitted",248
09072,1,"cup, pitted",250
09073,1,"cup, pitted",252
09074,1,cup,253
09076,1,"cup, thawed",259
09076,1,package (10 oz),284
09077,1,cup slices,110
09078,1,"cup, chopped",110
09078,1,"cup, whole",100
09079,.33,cup,40
09081,1,cup,277
09081,1,"slice (1/2"" thick, approx 8 slices per can)",57
09082,1,cup,275
09083,1,cup,112
09084,1,cup,112
09085,1,cup,144
09087,1,"cup, chopped",147
09087,1,"date, pitted",7.1
09088,1,cup,145
09089,1,"large (2-1/2"" dia)",64
09089,1,"medium (2-1/4"" dia)",50
09089,1,"small (1-1/2"" dia)",40
09090,1,cup,248
09090,1,fig with liquid,27
09091,1,cup,252
09091,1,fig with liquid,28
09092,1,cup,259
09092,1,fig with liquid,28
09094,1,cup,149
09094,1,fig,8.4
09095,1,cup,259
09096,1,cup,237
09097,1,cup,237
09099,1,cup,242
09100,1,cup,248
09102,1,cup,245
09103,1,cup,249
09104,1,cup,252
09105,1,cup,255
09107,1,cup,150
09109,1,cup,252
09111,1,"cup sections, with juice",230
09111,.5,"large (approx 4-1/2"" dia)",166
09111,.5,"medium (approx 4"" dia)",128
09111,.5,"small (approx 3-1/2"" dia)",100
09112,1,"cup sections, with juice",230
09112,.5,"fruit (3-3/4"" dia)",123
09116,1,"cup sections, with juice",230
09116,.5,"fruit (3-3/4"" dia)",118
09119,1,cup,244
09120,1,cup,249
09121,1,cup,254
09123,1,cup,247
09123,1,fl oz,30.9
09124,1,cup,250
09124,1,fl oz,31.2
09125,1,can (6 fl oz),207
09128,1,cup,247
09128,1,fl oz,30.9
09128,1,fruit yields,196
09129,1,grape,6.0
09130,1,cup,253
09130,1,fl oz,31.6
09131,1,cup,92
09131,1,grape,2.4
09132,1,cup,151
09132,10,grapes,49
09133,1,cup,245
09134,1,cup,256
09135,1,cup,253
09135,1,fl oz,31.6
09138,1,cup,140
09139,1,cup,165
09139,1,"fruit, without refuse",55
09140,1,cup,244
09140,1,fruit without refuse,6.0
09143,1,cup,238
09144,1,"cup, sliced",165
09144,1,"cup 1"" pieces",151
09145,1,cup,135
09145,3,fruit,9.0
09148,1,"cup, sliced",180
09148,1,"fruit (2"" dia)",69
09149,1,fruit without refuse,19
09150,1,"cup, sections",212
09150,1,"fruit (2-1/8"" dia)",58
09150,1,"fruit (2-3/8"" dia)",84
09150,1,"wedge or slice (1/8 of one 2-1/8"" dia lemon)",7.0
09152,1,cup,244
09152,1,fl oz,30.5
09152,1,lemon yields,48
09152,1,wedge yields,5.9
09153,1,cup,244
09153,1,tbsp,15
09153,1,fl oz,30.5
09154,1,cup,244
09154,1,fl oz,30.5
09156,1,tbsp,6.0
09156,1,tsp,2.0
09159,1,"fruit (2"" dia)",67
09160,1,cup,242
09160,1,fl oz,30.8
09160,1,lime yields,44
09161,1,cup,246
09161,1,fl oz,30.8
09163,.25,cup,40
09164,1,cup,190
09164,1,fruit without refuse,9.6
09165,1,fruit,2.5
09167,1,"cup, unthawed",147
09172,1,fruit without refuse,3.2
09173,1,fruit,1.7
09174,1,"cup, cubed",149
09174,1,large,20
09174,1,medium,16
09174,1,small,13.6
09175,1,fruit without refuse,846
09176,1,cup pieces,165
09176,1,fruit without refuse,336
09177,1,"cup, drained",196
09177,1,cup,216
09181,1,"cup, balls",177
09181,1,"cup, cubes",160
09181,1,"cup, diced",156
09181,1,"melon, large (about 6-1/2"" dia)",814
09181,1,"wedge, large (1/8 of large melon)",102
09181,1,"melon, medium (about 5"" dia)",552
09181,1,"wedge, medium (1/8 of medium melon)",69
09181,1,"melon, small (about 4-1/4"" dia)",441
09181,1,"wedge, small (1/8 of small melon)",55
09181,10,cantaloupe balls,138
09183,1,"cup, cubes",170
09183,1,melon,1640
09183,.1,fruit,164
09184,1,"cup, diced (approx 20 pieces per cup)",170
09184,1,"cup, balls",177
09184,1,"melon (5-1/4"" dia)",1000
09184,1,"melon (6"" - 7"" dia)",1280
09184,1,"wedge (1/8 of 5-1/4"" dia melon)",125
09184,1,"wedge (1/8 of 6"" to 7"" dia melon)",160
09184,10,honeydew balls,138
09185,1,"cup, unthawed",173
09190,1,cup,140
09190,10,fruit,15.0
09191,1,cup slices,143
09191,1,"small (2-1/3"" dia)",129
09191,1,"medium (2-1/2"" dia)",142
09191,1,"large (2-3/4"" dia)",156
09192,1,cup,140
09192,10,fruit,11.0
09193,1,tbsp,8.4
09193,1,large,4.4
09193,1,small,3.2
09194,1,super colossal,15
09194,1,jumbo,8.3
09195,1,olive,2.7
09200,1,"cup, sections",180
09200,1,"large (3-1/16"" dia)",184
09200,1,"small (2-3/8"" dia)",96
09200,1,"fruit (2-5/8"" dia)",131
09202,1,"cup sections, without membranes",165
09202,1,"fruit (2-7/8"" dia)",140
09205,1,cup,170
09205,1,fruit without seeds,159
09206,1,cup,248
09206,1,fl oz,31.0
09206,1,fruit yields,86
09207,1,cup,249
09207,1,fl oz,31.1
09207,1,drink box (8.45 fl oz),263
09209,1,cup,249
09209,1,fl oz,31.1
09210,1,cup,249
09210,1,fl oz,31.1
09211,1,cup,249
09211,1,fl oz,31.1
09214,1,cup,284
09214,1,fl oz,35.5
09214,1,can (6 fl oz),213
09216,1,tbsp,6.0
09216,1,tsp,2.0
09217,1,cup,247
09217,1,fl oz,30.9
09218,1,"cup, sections",195
09218,1,"small (2-1/4"" dia)",76
09218,1,"medium (2-1/2"" dia)",88
09218,1,"large (2-3/4"" dia)",120
09219,1,cup,249
09220,1,cup,252
09221,1,cup,247
09221,1,fl oz,30.9
09223,1,cup,249
09223,1,fl oz,31.1
09224,1,can (6 fl oz),214
09226,1,"cup 1"" pieces",145
09226,1,"cup, mashed",230
09226,1,"fruit, small",157
09226,1,"fruit, large",781
09228,1,piece,39
09229,1,cup,250
09229,1,fl oz,31.2
09231,1,cup,236
09231,1,fruit without refuse,18
09232,1,cup,247
09232,1,fl oz,30.9
09233,1,cup,247
09233,1,fl oz,30.9
09236,1,cup slices,154
09236,1,"small (2-1/2"" dia)",130
09236,1,"medium (2-2/3"" dia)",150
09236,1,"large (2-3/4"" dia)",175
09236,1,"extra large (3"" dia)",224
09237,1,"cup, halves or slices",244
09237,1,"half, with liquid",98
09238,1,cup,250
09238,1,"cup, halves or slices",248
09238,1,"half, with liquid",98
09240,1,"cup, halves or slices",251
09240,1,"half, with liquid",98
09241,1,cup,262
09241,1,"half, with liquid",98
09243,1,"cup, whole",242
09244,1,cup,116
09245,1,cup,242
09246,1,"cup, halves",160
09246,1,half,13.0
09247,1,cup,258
09248,1,cup,270
09250,1,"cup, thawed",250
09250,10,slices,155
09250,1,package (10 oz),284
09251,1,cup,249
09251,1,fl oz,31.1
09252,1,"cup, slices",140
09252,1,"cup, cubes",161
09252,1,small,148
09252,1,medium,178
09252,1,large,230
09253,1,"cup, halves",244
09253,1,"half, with liquid",76
09254,1,"cup, halves",248
09254,1,"half, with liquid",76
09256,1,"cup, halves",251
09256,1,"half, with liquid",76
09257,1,cup,266
09257,1,"half, with liquid",76
09259,1,"cup, halves",180
09259,1,half,18
09259,10,halves,175
09260,1,"cup, halves",255
09261,1,"cup, halves",280
09262,1,cup,250
09262,1,fl oz,31.2
09263,1,"fruit (2-1/2"" dia)",168
09264,1,fruit without refuse,34
09265,1,fruit without refuse,25
09266,1,"cup, chunks",165
09266,1,fruit,905
09266,1,"slice (4-2/3"" dia x 3/4"" thick)",166
09266,1,"slice (3-1/2"" dia x 3/4"" thick)",84
09266,1,"slice, thin (3-1/2"" dia x 1/2"" thick)",56
09267,1,"cup, crushed, sliced, or chunks",246
09267,1,"slice or ring (3"" dia) with liquid",47
09268,1,"cup, crushed, sliced, or chunks",249
09268,1,"slice or ring (3"" dia) with liquid",47
09269,1,"cup, crushed, sliced, or chunks",252
09269,1,"slice or ring (3"" dia) with liquid",48
09270,1,"cup, crushed, sliced, or chunks",254
09270,1,"slice or ring (3"" dia) with liquid",49
09272,1,"cup, chunks",245
09273,1,cup,250
09273,1,fl oz,31.3
09274,1,can (6 fl oz),216
09276,1,cup,173
09276,1,fruit without refuse,7.0
09277,1,"cup, sliced",148
09277,1,medium,179
09278,1,"cup, mashed",200
09278,1,cup slices,154
09279,1,"cup, sliced",165
09279,1,"fruit (2-1/8"" dia)",66
09281,1,"cup, pitted",249
09281,1,plum with liquid,46
09282,1,"cup, pitted",252
09282,1,plum with liquid,46
09283,1,"cup, pitted",252
09283,1,plum with liquid,46
09284,1,"cup, pitted",258
09284,1,plum with liquid,46
09286,.5,cup arils (seed/juice sacs),87
09286,1,"pomegranate (4"" dia)",282
09287,1,cup,149
09287,1,fruit without refuse,103
09288,1,cup,234
09288,5,prunes with liquid,86
09289,1,cup,132
09290,1,cup,280
09291,1,"cup, pitted",174
09291,1,"prune, pitted",9.5
09292,1,"cup, pitted",248
09293,1,"cup, pitted",248
09294,1,cup,256
09294,1,fl oz,32.0
09295,1,"cup, sections",190
09295,1,fruit without refuse,609
09296,1,fruit without refuse,92
09297,1,"cup, packed",165
09297,1,cup (not packed),145
09298,1,"cup, packed",165
09298,1,cup (not packed),145
09298,1,miniature box (.5 oz),14.0
09298,1,small box (1.5 oz),43
09298,50,raisins,26
09299,1,"cup, packed",165
09299,1,cup (not packed),145
09301,1,"cup, drained",150
09301,1,cup,214
09301,1,fruit,9.0
09302,1,cup,123
09302,1,"pint as purchased, yields",312
09302,10,raspberries,19
09304,1,cup,256
09306,1,"cup, unthawed",250
09306,1,package (10 oz),284
09307,1,"cup, diced",122
09307,1,stalk,51
09309,1,"cup, diced",137
09310,1,cup,240
09311,1,"cup, without refuse",57
09313,1,"cup, pulp",241
09313,1,sapodilla,170
09314,1,"cup 1"" pieces",175
09314,1,fruit without refuse,558
09315,1,"cup, pulp",225
09315,1,"fruit (7"" x 5-1/4"" dia)",625
09316,1,"cup, halves",152
09316,1,"cup, pureed",232
09316,1,"cup, sliced",166
09316,1,"cup, whole",144
09316,1,"extra large (1-5/8"" dia)",27
09316,1,"large (1-3/8"" dia)",18
09316,1,"medium (1-1/4"" dia)",12.0
09316,1,"pint as purchased, yields",357
09316,1,"small (1"" dia)",7.0
09317,1,cup,254
09318,1,"cup, thawed",221
09318,1,"cup, unthawed",149
09318,1,berry,10.6
09318,1,package (20 oz),567
09319,1,"cup, thawed",255
09319,1,package (10 oz),284
09320,1,"cup, thawed",255
09320,1,package (10 oz),284
09321,1,"cup, pulp",250
09321,1,"fruit (2-7/8"" dia)",155
09322,1,"cup, pulp",120
09322,1,"fruit (3"" x 1"")",2.0
09325,1,cup,257
09326,1,"cup, balls",154
09326,1,"cup, diced",152
09326,1,"melon (15"" long x 7-1/2"" dia)",4518
09326,1,wedge (approx 1/16 of melon),286
09326,10,watermelon balls,122
09334,1,"cup, pureed",243
09334,1,fruit without peel,42
09334,1,"cup 1/2"" chunks",205
09340,1,"fruit 2-1/4"" high x 2-1/2"" dia",122
09340,1,"fruit 3-3/8"" high x 3"" diameter",275
09351,1,cup,214
09352,1,cup,244
09353,1,cup,319
09354,1,"cup, chunks",181
09354,1,"cup, crushed",195
09354,1,"cup, sliced",162
09354,1,spear,26
09357,1,"cup, halves",219
09357,1,"cup, whole",182
09362,1,cup,168
09367,1,cup,179
09370,1,cup,222
09370,1,half,73
09370,1,slice,12.7
09374,1,cup,201
09374,1,half,48
09379,1,"cup, with pits, yields",183
09383,1,cup,189
09400,1,cup,248
09400,1,fl oz,31.0
09401,1,cup,244
09402,1,cup,255
09403,1,cup,251
09403,1,fl oz,31.4
09404,1,cup,247
09404,1,fruit yields,196
09407,1,cup,249
09407,1,fl oz,31.1
09408,1,cup,250
09408,1,fl oz,31.2
09409,1,cup,250
09409,1,fl oz,31.3
09410,1,can (6 fl oz),211
09412,1,"cup, sliced",140
09412,1,small,152
09412,1,medium,177
09412,1,large,227
09413,1,small,126
09413,1,medium,157
09413,1,large,223
09413,1,"cup, sliced",140
09414,1,"cup, sliced",140
09414,1,small,159
09414,1,medium,179
09414,1,large,219
09415,1,"cup, sliced",140
09415,1,small,172
09415,1,medium,202
09415,1,large,242
09420,1,"cup, drained",178
09421,1,"date, pitted",24
09422,1,"cup, chopped or diced",243
09422,1,fruit,602
09423,2,tbsp,36
09427,.5,cup,114
09428,.5,cup,114
09429,1,"cup, chunks",165
09429,1,"slice (4-2/3"" dia x 3/4"" thick)",175
09429,1,fruit,1002
09430,1,"cup, chunks",165
09430,1,"slice (4-2/3"" dia x 3/4"" thick)",166
09430,1,fruit,905
09433,1,fruit,74
09434,1,cup,251
09435,1,cup,251
09436,1,cup,251
09437,1,cup,251
09442,1,cup,249
09442,1,fl oz,31.4
09443,8,fl oz,250
09444,8,fl oz,250
09445,1,"cup, sliced",186
09445,1,fruit,86
09446,1,cup,118
09446,10,"slices (1/4"" thick)",53
09448,3,fruit without pits,11.1
09449,1,"cup without pits, thawed",112
09449,3,"fruit without pits, thawed",9.8
09450,1,cup thawed,120
09451,1,cup,233
09451,1,"fruit (4-2/3"" long x 2-3/4"" dia)",209
09452,8,fl oz,246
09500,1,"cup, sliced",109
09500,1,large,260
09500,1,medium,212
09500,1,small,158
09501,1,"cup, sliced",109
09501,1,large,215
09501,1,medium,169
09501,1,small,129
09502,1,"cup, sliced",109
09502,1,large,206
09502,1,medium,167
09502,1,small,144
09503,1,"cup, sliced",109
09503,1,large,200
09503,1,medium,172
09503,1,small,157
09504,1,"cup, sliced",109
09504,1,large,236
09504,1,medium,192
09504,1,small,158
10009,1,"cup, diced",135
10011,1,"cup, diced",135
10013,1,"cup, diced",135
10014,1,roast,3952
10015,1,roast,3027
10016,1,roast,3868
10017,1,roast,2900
10018,1,roast,3868
10019,1,roast,2900
10020,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",117
10021,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",89
10022,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",87
10023,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",89
10024,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",106
10025,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",80
10026,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",79
10027,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",81
10028,1,chop,263
10029,1,chop,206
10030,1,chop,219
10031,1,roast,830
10032,1,chop,263
10033,1,chop,206
10034,1,chop,219
10035,1,roast,830
10036,1,"chop without refuse (Yield from 1 raw chop, with refuse, weighing 259g)",199
10037,1,chop,187
10038,1,"chop without refuse (Yield from 1 cooked chop, with refuse, weighing 209g)",157
10039,1,roast,900
10040,1,"chop without refuse (Yield from 1 raw chop, with refuse, weighing 259g)",178
10041,1,chop,187
10042,1,"chop without refuse (Yield from 1 cooked chop, with refuse, weighing 209g)",146
10043,1,roast,900
10044,1,"chop without refuse (Yield from 1 raw chop, with refuse, weighing 201g)",133
10045,1,chop,187
10046,1,"chop without refuse (Yield from 1 cooked chop, with refuse, weighing 172g)",112
10047,1,roast,783
10048,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",86
10049,1,chop,187
10050,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 151 g)",67
10051,1,roast,783
10052,1,"roast without refuse (Yield from 1 raw roast, with refuse, weighing 1817g)",1327
10053,1,chop,180
10054,1,chop,195
10055,1,"roast without refuse (Yield from 1 cooked roast, with refuse, weighing 1515g)",1046
10056,1,"roast without refuse (Yield from 1 raw roast, with refuse, weighing 1818g)",1217
10057,1,chop,180
10058,1,chop,195
10059,1,roast without refuse,985
10060,1,roast,505
10061,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",333
10061,1,roast,402
10062,1,chop,185
10063,1,chop,135
10064,1,chop,145
10065,1,roast,848
10066,1,chop,185
10067,1,chop,135
10068,1,chop,145
10071,1,"cup, diced",135
10073,1,"cup, diced",135
10074,1,roast,2745
10075,1,roast,2252
10076,1,"cup, diced",135
10077,1,roast,2745
10078,1,roast,2252
10079,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",191
10080,1,"steak without refuse (Yield from 1 raw steak, with refuse, weighing 380g)",288
10081,1,"steak without refuse (Yield from 1 cooked steak, with refuse, weighing 249g)",185
10082,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 300 g)",169
10083,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",262
10084,1,"steak without refuse (Yield from 1 raw steak, with refuse, weighing 379g)",258
10085,1,steak,249
10086,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 300 g)",147
10087,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",238
10089,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",177
10093,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",231
10100,1,ear,113
10101,1,ear (yield after cooking),111
10103,1,heart,226
10104,1,cup,145
10104,1,heart,129
10106,1,kidney,233
10107,1,cup,140
10120,1,chop,215
10122,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",231
10123,1,slice raw,28
10123,1,package,442
10128,3,slices,68
10128,1,package (12 oz),340
10129,3,"slices, cooked (raw product packed 15 per 12-oz bag)",34
10129,1,package (12 oz),170
10130,2,slices (6 per 6-oz pkg.),57
10130,1,package (6 oz),170
10131,1,package (6 oz) yields,139
10131,2,slices (6 per 6-oz pkg.),47
10134,1,cup,140
10136,1,cup,140
10137,1,cup,140
10138,1,cup,140
10140,1,cup,140
10146,1,patty,65
10149,1,slice,57
10150,1,cup,140
10152,1,cup,140
10153,1,cup,140
10168,1,cup,140
10169,1,cup,140
10171,1,"piece, cooked (yield from 1 lb unheated product)",376
10175,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",275
10176,1,chop,172
10177,1,chop,169
10178,1,chop,215
10179,1,chop,172
10180,1,chop,169
10181,1,chop,142
10181,1,raw pr g,183
10182,1,cup,140
10182,1,"slice (6-1/4"" x 4"" x 1/16"") (1 oz)",28
10183,1,cup,140
10184,1,cup,140
10185,1,cup,140
10186,1,chop,142
10188,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",247
10194,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",101
10195,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",81
10196,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",80
10197,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",75
10198,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",317
10199,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",88
10200,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",72
10201,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",71
10202,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",66
10203,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",283
10204,1,"rib without refuse (Yield from 1 raw rib, with refuse, weighing 196g)",128
10205,1,"rib without refuse (Yield from 1 cooked rib, with refuse, weighing 140g)",86
10206,1,rack,138
10207,1,rib,197
10208,1,"rib without refuse (yield from 1 cooked rib, with refuse, weighing 141g)",80
10209,1,rack,138
10210,1,chop,210
10211,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",82
10212,1,chop,159
10213,1,roast,638
10214,1,chop,210
10215,1,chop,161
10216,1,chop,159
10217,1,roast,638
10218,1,"roast (Yield from 1 raw roast, with refuse, weighing 504g)",505
10221,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",76
10222,1,roast,402
10223,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 113 g)",73
10224,1,roast,2195
10225,1,roast,2195
10227,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",261
10229,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",236
10860,1,slice cooked,8.1
10861,1,slice cooked,9.1
10861,1,slice raw,28
10862,1,slice,11.5
10865,1,roast rump,2970
10867,1,roast shank,3054
10868,1,slice,436
10869,1,slice,446
10870,1,slice,138
10871,1,roast,1995
10873,1,roast rump,2673
10874,1,roast shank,3170
10875,1,slice,445
10876,1,slice,145
10876,1,roast,920
10877,1,roast rump,2533
10878,1,slice,189
10879,1,roast whole,1867
10881,1,roast shank,3204
10882,1,slice,277
10883,1,roast,1497
10892,1,slice,430
10899,1,slice,366
10913,1,roast rump,2970
10914,1,roast shank,3054
10915,1,slice,436
10916,1,slice,189
10917,1,roast,1867
10918,1,roast rump,2533
10919,1,roast shank,3204
10920,1,slice,446
10921,1,slice,136
10922,1,roast,1995
10923,1,roast rump,2673
10924,1,roast shank,3170
10925,1,slice,445
10926,1,slice,277
10927,1,slice,145
10927,1,roast,920
10928,1,roast,1497
10929,1,roast rump,2874
10931,1,roast rump,2874
10933,1,roast shank,2800
10935,1,roast shank,2800
10937,1,slice,366
10938,1,slice,425
10939,1,slice,425
10956,1,piece,194
10957,1,piece,231
10958,1,piece,430
10959,1,piece,373
10960,1,piece,92
10961,1,piece,105
10962,1,piece,609
10963,1,piece,765
10982,1,chop,176
10983,1,roast,848
10984,1,chop,131
10985,1,rack,122
10986,1,rack,122
10987,1,rack,138
10988,1,chop,131
10989,1,chop,176
10990,1,roast,848
10991,1,rack,122
10992,1,rack,122
10993,1,rack,138
10994,1,slice,26
10994,1,package,446
10998,1,slice,13.8
11001,1,cup,33
11001,1,tbsp,3.0
11003,1,cup,28
11003,1,leaf,14.0
11004,1,cup,132
11005,1,large,25
11005,1,medium,12.0
11006,1,medium,12.0
11007,1,"artichoke, medium",128
11007,1,"artichoke, large",162
11008,1,"artichoke, medium",120
11008,.5,cup hearts,84
11009,.33,package,84
11009,1,package (9 oz),255
11010,1,cup,168
11010,1,"package (9 oz), yields",240
11010,.333,package (9 oz) yields,80
11011,1,cup,134
11011,1,"spear, small (5"" long or less)",12.0
11011,1,"spear, medium (5-1/4"" to 7"" long)",16
11011,1,"spear, large (7-1/4"" to 8-1/2"")",20
11011,1,"spear, extra large (8-3/4"" to 10"" long)",24
11011,1,"spear tip (2"" long or less)",3.5
11012,.5,cup,90
11012,4,"spears (1/2"" base)",60
11013,.5,cup,122
11013,1,can (300 x 407),411
11015,1,cup,242
11015,1,"spear (about 5"" long)",18
11015,1,can (300 x 407),248
11018,4,spears,58
11018,1,package (10 oz),284
11019,1,cup,180
11019,1,package (10 oz) yields,293
11019,4,spears,60
11022,1,leaf,4.0
11022,.5,cup,24
11023,1,cup,58
11024,1,"cup (1/2"" pieces)",93
11024,1,balsam-pear,124
11025,1,"cup (1/2"" pieces)",124
11025,.5,"cup (1/2"" pieces)",62
11026,1,"cup (1/2"" slices)",151
11026,.5,"cup (1/2"" pieces)",76
11027,1,"cup (1/2"" slices)",120
11027,1,shoot,144
11028,1,"cup (1/8"" slices)",131
11028,1,can (303 x 406),262
11029,1,cup,184
11031,1,cup,156
11032,1,cup,170
11033,.5,cup,124
11033,1,can (303 x 406),454
11037,1,cup,160
11037,1,package (10 oz),284
11038,1,cup,170
11038,1,package (10 oz) yields,311
11039,1,cup,164
11039,1,package (10 oz),284
11040,1,cup,180
11040,1,package (10 oz) yields,311
11043,1,cup,104
11043,1,package (12 oz),340
11044,1,cup,124
11045,1,cup,124
11046,1,cup,104
11048,.333,package (10 oz),94
11048,1,package (10 oz),284
11049,.333,package (10 oz) yields,94
11049,1,package (10 oz) yields,284
11050,1,cup,245
11052,1,"cup 1/2"" pieces",100
11052,10,"beans (4"" long)",55
11053,1,cup,125
11054,1,cup,240
11054,1,can total can contents,423
11056,1,cup solids,153
11056,10,beans,62
11056,1,can (303 x 406),262
11058,.5,cup,114
11058,1,can (303 x 406),439
11060,1,cup,121
11060,1,package (10 oz),284
11061,1,cup,135
11062,1,cup,111
11063,1,"cup 1/2"" pieces",116
11080,1,cup,136
11080,1,"beet (2"" dia)",82
11081,.5,cup slices,85
11081,2,"beets (2"" dia, sphere)",100
11082,1,cup,246
11084,1,"cup, diced",157
11084,1,"cup, shredded",195
11084,1,cup slices,170
11084,1,"cup, whole",163
11084,1,slice,8.0
11084,1,beet,24
11084,1,can (303 x 406),294
11086,1,cup,38
11086,1,leaf,32
11086,.5,"cup (1"" pieces)",19
11087,1,"cup (1"" pieces)",144
11087,.5,"cup (1"" pieces)",72
11088,1,cup,109
11088,1,broadbean,8.0
11090,1,cup chopped,91
11090,1,bunch,608
11090,1,"spear (about 5"" long)",31
11090,1,stalk,151
11090,.5,"cup, chopped or diced",44
11091,.5,"cup, chopped",78
11091,1,"stalk, large (11""-12"" long)",280
11091,1,"stalk, medium (7-1/2"" - 8"" long)",180
11091,1,"stalk, small (5"" long)",140
11091,1,"spear (about 5"" long)",37
11092,1,cup,156
11092,1,package (10 oz),284
11093,1,cup,184
11094,.33,package (10 oz),95
11094,1,package (10 oz),284
11094,1,package (2 lb),907
11095,.5,cup,92
11095,1,package (10 oz) yields,250
11096,1,cup chopped,40
11096,1,stalk,19
11097,1,bunch cooked,437
11098,1,cup,88
11098,1,sprout,19
11099,1,sprout,21
11099,.5,cup,78
11100,.33,package (10 oz),95
11100,1,package (10 oz),284
11100,1,package (2 lb),907
11101,1,cup,155
11104,1,"cup (1"" pieces)",118
11104,1,root,156
11105,1,"cup (1"" pieces)",125
11105,1,root,166
11106,1,cup,94
11106,1,petiole,5.0
11108,1,"cup, chopped",124
11108,3,stalks,45
11109,1,"cup, chopped",89
11109,1,"cup, shredded",70
11109,1,"head, large (about 7"" dia)",1248
11109,1,"leaf, large",33
11109,1,"head, medium (about 5-3/4"" dia)",908
11109,1,"leaf, medium",23
11109,1,"head, small (about 4-1/2"" dia)",714
11109,1,leaf,15.0
11110,.5,"cup, shredded",75
11110,1,head,1262
11112,1,"cup, chopped",89
11112,1,"cup, shredded",70
11112,1,"head, large (about 5-1/2"" dia)",1134
11112,1,leaf,23
11112,1,"head, medium (about 5"" dia)",839
11112,1,"head, small (4"" dia)",567
11113,1,leaf,22
11113,.5,"cup, shredded",75
11114,1,"cup, shredded",70
11115,1,"cup, shredded",145
11116,1,"cup, shredded",70
11116,1,head,840
11116,1,leaf,14.0
11117,1,"cup, shredded",170
11119,1,"cup, shredded",76
11120,1,"cup, shredded",119
11120,1,leaf,14.0
11122,1,"cup, shredded",178
11124,1,cup chopped,128
11124,1,cup grated,110
11124,1,cup strips or slices,122
11124,1,"large (7-1/4"" to 8-/1/2"" long)",72
11124,1,medium,61
11124,1,"small (5-1/2"" long)",50
11124,1,slice,3.0
11124,1,"strip large (3"" long)",7.0
11124,1,strip medium,4.0
11125,1,tbsp,9.7
11125,.5,cup slices,78
11125,1,carrot,46
11126,.5,cup slices,123
11126,1,can (303 x 406),454
11128,1,"cup, sliced",146
11128,1,"cup, mashed",228
11128,1,slice,2.8
11128,1,can (303 x 406),284
11130,.5,cup slices,64
11130,1,package (10 oz),284
11131,1,"cup, sliced",146
11134,1,cup,206
11134,1,root,408
11135,1,"cup chopped (1/2"" pieces)",107
11135,1,floweret,13.0
11135,1,"head large (6-7"" dia.)",840
11135,1,"head medium (5-6"" dia.)",588
11135,1,"head small (4"" dia.)",265
11136,.5,"cup (1"" pieces)",62
11136,3,flowerets,54
11137,.5,"cup (1"" pieces)",66
11137,1,package (10 oz),284
11138,1,"cup (1"" pieces)",180
11141,1,cup,156
11142,1,cup pieces,155
11143,1,cup chopped,101
11143,1,tbsp,7.5
11143,1,"stalk, large (11""-12"" long)",64
11143,1,"stalk, medium (7-1/2"" - 8"" long)",40
11143,1,"stalk, small (5"" long)",17
11143,1,"strip (4"" long)",4.0
11144,1,"cup, diced",150
11144,2,stalks,75
11145,1,leaf,8.0
11147,1,cup,36
11147,1,leaf,48
11148,1,"cup, chopped",175
11149,1,"cup (1"" pieces)",132
11149,1,"chayote (5-3/4"")",203
11150,1,"cup (1"" pieces)",160
11151,1,head,53
11151,.5,cup,45
11152,1,"cup, chopped",29
11154,1,root,60
11154,.5,"cup (1"" pieces)",45
11156,1,tbsp chopped,3.0
11156,1,tsp chopped,1.0
11157,1,"cup (1"" pieces)",25
11157,1,"stem (8-3/4"" long)",14.0
11158,1,"cup (1"" pieces)",100
11161,1,"cup, chopped",36
11162,1,"cup, chopped",190
11163,.33,package (10 oz),95
11163,1,package (10 oz),284
11163,1,package (3 lb),1361
11164,1,"cup, chopped",170
11165,.25,cup,4.0
11165,9,sprigs,20
11167,1,cup,145
11167,1,"ear, large (7-3/4"" to 9"" long) yields",143
11167,1,"ear, medium (6-3/4"" to 7-1/2"" long) yields",102
11167,1,"ear, small (5-1/2"" to 6-1/2"" long)",73
11168,1,"ear small (5-1/2"" to 6-1/2"" long)",89
11168,1,"ear medium (6-3/4"" to 7-1/2"" long)",103
11168,1,"ear large (7-3/4"" to 9"" long)",118
11168,1,cup cut,149
11168,1,baby ear,8.0
11170,1,cup,256
11170,1,can (303 x 406),482
11172,1,cup,164
11172,1,can (12 oz) yields,211
11172,1,can (303 x 406),298
11174,1,cup,256
11174,1,can (303 x 406),482
11176,1,cup,210
11176,1,"can, 15 oz (303 x 406)",425
11176,1,can (303 x 406),340
11177,1,"cup drained, rinsed",150
11177,1,"can drained, rinsed",266
11178,1,cup,136
11178,1,package,284
11179,1,cup,165
11179,1,package (10 oz) yields,284
11180,1,cup kernels,165
11180,1,"ear, yields",125
11181,1,cup kernels,165
11181,1,"ear, yields",63
11182,1,cup,141
11184,1,cup,227
11190,1,cup,56
11191,1,cup,145
11192,1,cup,165
11195,1,cup,160
11195,1,package (10 oz),284
11196,1,cup,170
11197,1,cup,94
11197,1,pod,12.0
11198,1,cup,95
11199,1,cup slices,91
11199,1,pod,12.0
11200,1,cup slices,104
11200,1,pod,14.0
11201,1,"cup, chopped",36
11201,1,leaf,3.0
11202,1,"cup, chopped",53
11203,1,cup,50
11203,1,sprig,1.0
11204,1,cup,135
11204,.5,cup,68
11205,.5,cup slices,52
11205,1,"cucumber (8-1/4"")",301
11206,1,"cup, pared, chopped",133
11206,1,"cup, sliced",119
11206,1,"large (8-1/4"" long)",280
11206,1,medium,201
11206,1,slice,7.0
11206,1,"small (6-3/8"" long)",158
11206,1,"stick (4"" long)",9.0
11207,1,"cup, chopped",55
11208,1,"cup, chopped",105
11209,1,"cup, cubes",82
11209,1,"eggplant, peeled (yield from 1-1/4 lb)",458
11209,1,"eggplant, unpeeled (approx 1-1/4 lb)",548
11210,1,"cup (1"" cubes)",99
11211,1,cup,118
11211,1,package,432
11212,1,cup,155
11213,.5,"cup, chopped",25
11213,1,head,513
11215,1,cup,136
11215,1,tsp,2.8
11215,1,clove,3.0
11215,3,cloves,9.0
11216,1,tsp,2.0
11216,.25,"cup slices (1"" dia)",24
11216,5,"slices (1"" dia)",11.0
11218,.5,"cup (1"" pieces)",58
11218,1,gourd,771
11219,1,"cup (1"" cubes)",146
11220,1,"cup (1"" pieces)",95
11220,1,gourd,178
11221,1,"cup (1"" pieces)",178
11221,.5,"cup (1"" slices)",89
11222,1,"cup, chopped",21
11223,1,"cup, chopped",42
11224,1,cup,80
11225,1,cup,87
11226,1,cup slices,150
11228,1,cup slices,99
11228,1,piece,6.0
11230,1,cup,24
11231,1,cup,28
11232,1,cup,87
11233,1,"cup, chopped",67
11234,1,"cup, chopped",130
11235,.333,package (10 oz),94
11235,1,package (10 oz),284
11236,1,"cup, chopped",130
11236,.5,"cup, chopped or diced",65
11237,1,strip,6.3
11237,.5,cup,27
11238,1,piece whole,19
11239,1,cup,54
11239,1,piece,5.4
11240,1,cup,66
11240,1,piece,12.9
11241,1,cup,135
11241,1,slice,16
11242,1,cup slices,165
11243,1,cup sliced,121
11245,1,"cup, chopped",180
11246,1,cup,89
11246,1,leek,89
11246,1,slice,6.0
11247,1,leek,124
11247,.25,"cup, chopped or diced",26
11248,1,cup,77
11250,1,"cup, shredded or chopped",55
11250,1,"head (5"" dia)",163
11250,1,"leaf, large",15.0
11250,1,"leaf, medium",7.5
11250,1,leaf,5.0
11251,1,cup shredded,47
11251,1,leaf inner,6.0
11251,1,leaf outer,28
11251,1,head,626
11252,1,cup shredded,72
11252,1,"cup, chopped (1/2"" pieces, loosely packed)",57
11252,1,"head, large",755
11252,1,"head, medium (6"" dia)",539
11252,1,"head, small",324
11252,1,"leaf, large",15.0
11252,1,"leaf, medium",8.0
11252,1,"leaf, small",5.0
11253,1,cup shredded,36
11253,1,head,360
11253,1,leaf inner,4.8
11253,1,leaf outer,24
11254,10,"slices (2-1/2"" dia)",81
11254,1,"root (9-1/2"" long)",115
11255,.5,cup,60
11255,10,"slices (2-1/2"" dia)",89
11257,1,cup shredded,28
11257,1,leaf inner,2.6
11257,1,leaf outer,17
11257,1,head,309
11258,.5,"cup, cubes",68
11258,1,yam,420
11259,1,"cup, cubes",145
11260,1,"cup, pieces or slices",70
11260,1,"cup, whole",96
11260,1,large,23
11260,1,medium,18
11260,1,slice,6.0
11260,1,small,10.0
11260,.5,cup pieces,35
11261,1,cup pieces,156
11261,1,tbsp,9.8
11261,1,mushroom,12.0
11263,1,cup sliced,108
11264,1,cup,156
11264,1,can,132
11264,1,large,16
11264,1,medium,12.0
11264,1,small,7.0
11264,10,slices,40
11264,8,caps,47
11264,.5,cup pieces,78
11265,1,cup diced,86
11265,1,piece whole,84
11266,1,cup whole,87
11266,1,cup sliced,72
11266,1,piece whole,20
11267,1,cup whole,89
11267,1,cup sliced,97
11267,1,piece whole,19
11268,1,mushroom,3.6
11268,4,mushrooms,15.0
11269,1,cup pieces,145
11269,4,mushrooms,72
11270,1,"cup, chopped",56
11271,1,"cup, chopped",140
11272,1,"cup, chopped",146
11272,1,package (10 oz),284
11273,1,"cup, chopped",150
11273,1,package (10 oz) yields,212
11274,1,"cup, chopped",150
11275,1,"cup, chopped",180
11276,1,"cup, chopped",56
11277,1,"cup, chopped",180
11278,1,cup,100
11278,8,"pods (3"" long)",95
11279,.5,cup slices,80
11279,8,"pods (3"" long)",85
11280,.33,package (10 oz),95
11280,1,package (10 oz),284
11280,1,package (3 lb),1361
11281,.5,cup slices,92
11281,1,package (10 oz) yields,255
11282,1,"cup, chopped",160
11282,1,"cup, sliced",115
11282,1,tbsp chopped,10.0
11282,1,large,150
11282,1,"slice, large (1/4"" thick)",38
11282,1,"medium (2-1/2"" dia)",110
11282,1,"slice, medium (1/8"" thick)",14.0
11282,1,small,70
11282,1,"slice, thin",9.0
11282,10,rings,60
11283,1,cup,210
11283,1,tbsp chopped,15.0
11283,1,large,128
11283,1,"slice, large (1/4"" thick)",32
11283,1,medium,94
11283,1,"slice, medium (1/8"" thick)",12.0
11283,1,small,60
11283,1,"slice, thin",8.0
11284,1,tbsp,5.0
11284,.25,cup,14.0
11285,1,onion,63
11285,.5,"cup, chopped or diced",112
11286,1,cup chopped,87
11287,.33,package (10 oz),95
11287,1,package (10 oz),284
11288,1,tbsp chopped,15.0
11288,.5,"cup, chopped or diced",105
11289,.33,package (10 oz),95
11289,1,package (10 oz),284
11290,1,cup,210
11291,1,"cup, chopped",100
11291,1,tbsp chopped,6.0
11291,1,large,25
11291,1,"medium (4-1/8"" long)",15.0
11291,1,"small (3"" long)",5.0
11292,1,tbsp,6.0
11292,1,stalk,12.0
11292,1,cup chopped,71
11294,1,onion,331
11295,6,rings,85
11295,1,package (16 oz),454
11295,1,package (9 oz),255
11296,1,cup,48
11296,10,"rings, large (3-4"" dia)",71
11296,10,"rings, medium (2-3"" dia)",60
11296,10,"rings, small (1-2"" dia)",48
11297,1,cup chopped,60
11297,1,tbsp,3.8
11297,10,sprigs,10.0
11298,1,cup slices,133
11299,.5,cup slices,78
11299,1,"parsnip (9"" long)",160
11300,1,"cup, chopped",98
11300,1,"cup, whole",63
11300,10,pea pods,34
11301,1,cup,160
11302,1,cup,144
11302,1,package (10 oz),284
11303,1,cup,160
11303,1,package (10 oz) yields,253
11304,1,cup,145
11305,1,cup,160
11306,.5,cup,124
11306,1,can (303 x 406),482
11308,1,cup,175
11308,1,can (303 x 406),313
11310,1,cup,227
11310,.5,cup,114
11311,1,can,257
11311,1,cup,163
11312,1,cup,134
11312,1,package,284
11313,.5,cup,80
11313,1,package (10 oz) yields,253
11316,1,cup,120
11318,1,cup,255
11322,.5,cup,70
11322,1,package (10 oz),284
11323,1,package (10 oz) yields,278
11323,.5,cup,80
11324,1,cup,120
11326,.5,cup,69
11326,1,package (10 oz),284
11327,1,cup,180
11329,1,pepper,73
11329,.5,"cup, chopped or diced",68
11333,1,"cup, chopped",149
11333,1,"cup, sliced",92
11333,1,tbsp,9.3
11333,1,"large (2-1/4 per lb, approx 3-3/4"" long, 3"" dia)",164
11333,1,"medium (approx 2-3/4"" long, 2-1/2"" dia)",119
11333,1,"ring (3"" dia, 1/4"" thick)",10.0
11333,1,small,74
11333,10,strips,27
11334,1,"cup, chopped or strips",135
11334,1,"tablespoon, chopped",11.6
11335,1,"cup, halves",140
11337,.33,package (10 oz),95
11337,1,package (10 oz),284
11339,1,cup chopped,115
11344,1,cup,154
11344,10,seeds,4.0
11345,1,cup,153
11349,1,cup,240
11350,1,cup,160
11351,1,cup,165
11351,1,tbsp,10.0
11352,.5,"cup, diced",75
11352,1,"Potato large (3"" to 4-1/4"" dia)",369
11352,1,"Potato medium (2-1/4"" to 3-1/4"" dia)",213
11352,1,"Potato small (1-3/4"" to 2-1/2"" dia)",170
11353,.5,"cup, diced",75
11353,1,"potato large (3"" to 4-1/4"" dia)",369
11353,1,"Potato medium (2-1/4"" to 3-1/4"" dia)",213
11353,1,"Potato small (1-3/4"" to 2-1/4"" dia)",170
11354,.5,"cup, diced",75
11354,1,"large (3"" to 4-1/4"" dia.)",369
11354,1,"medium (2+-1/4"" to 3-1/4"" dia.)",213
11354,1,"small (1-3/4"" to 2-1/4"" dia.)",92
11355,.5,"cup, diced",75
11355,1,"potato large (3"" to 4-1/4"" dia)",369
11355,1,"potato medium (2-1/4"" to 3-1/4"" dia)",213
11355,1,"potato small (1-3/4"" to 2-1/4"" dia)",170
11356,1,"potato large (3"" to 4-1/4"" dia.",299
11356,1,"potato medium (2-1/4"" to 3-1/4"" dia.)",173
11356,1,"potato small (1-3/4"" to 2-1/2"" dia.)",138
11357,1,"potato large (3"" to 4-1/4"" dia)",299
11357,1,"potato medium (2-1/4"" to 3-1/4"" dia)",173
11357,1,"potato small (1-3/4"" to 2-1/2"" dia)",138
11358,1,"potato large (3"" to 4-1/4"" dia.",299
11358,1,"potato medium (2-1/4"" to 3-1/4"" dia.)",173
11358,1,"potato small (1-3/4"" to 2-1/2"" dia.)",138
11359,10,strip,82
11360,10,strip,69
11362,1,skin,38
11363,.5,cup,61
11363,1,"potato (2-1/3"" x 4-3/4"")",156
11364,1,skin,58
11365,.5,cup,78
11365,1,"potato (2-1/2"" dia, sphere)",136
11366,1,skin,34
11367,.5,cup,78
11367,1,"large (3"" to 4-1/4"" dia.)",300
11367,1,"medium (2-1/4"" to 3-1/4"" dia.)",167
11367,1,"small (1-3/4"" to 2-1/2"" dia.)",125
11368,.5,cup,78
11368,1,"potato (2-1/3"" x 4-3/4"")",156
11369,1,skin,58
11370,1,cup,156
11371,1,cup,210
11372,1,cup,245
11373,1,cup,245
11374,1,"cup, whole",300
11374,1,can (303 x 406),454
11376,1,cup,180
11376,1,potato,35
11378,1,cup,60
11379,1,cup,210
11380,1,cup,200
11381,1,cup,210
11382,1,cup,200
11383,1,cup,210
11384,.167,package (5.5 oz),26
11384,1,package (5.5 oz),156
11385,.167,package (5.5 oz) yields,137
11386,.167,package (5.5 oz),26
11386,1,package (5.5 oz),156
11387,1,cup (unprepared),245
11387,.167,package (5.5 oz) yields,137
11390,.5,cup,105
11390,1,package (12 oz),340
11391,1,cup prepared,150
11391,1,"patty, oval (approx 3"" x 1-1/2"" x 1/2"")",29
11392,1,package (6 oz),170
11394,10,strip,30
11395,10,strip,21
11398,1,cup,120
11398,10,pieces,91
11399,10,puffs,79
11399,1,puff,7.0
11399,1,cup,128
11400,1,cup,182
11402,10,strip,89
11402,1,package (9 oz),255
11403,10,strips,50
11403,1,"package (9 oz), yields",198
11406,10,strips,65
11406,1,package (9 oz),255
11407,10,strips,50
11407,1,"package (9 oz), yields",198
11408,10,strips,65
11408,1,package (9 oz),255
11409,10,strips,50
11409,1,"package (9 oz), yields",198
11411,10,strip,153
11412,10,strip,133
11413,1,cup,160
11414,1,cup,250
11416,1,cup,33
11416,1,flower,2.0
11417,1,cup,134
11418,1,cup,39
11419,1,cup,71
11422,1,"cup (1"" cubes)",116
11423,1,"cup, mashed",245
11424,1,cup,245
11426,1,cup,270
11427,1,cup,43
11427,1,plant,3.0
11428,1,cup,115
11428,1,squash,431
11429,1,cup slices,116
11429,1,"large (1"" to 1-1/4"" dia)",9.0
11429,1,"medium (3/4"" to 1"" dia)",4.5
11429,1,slice,1.0
11429,1,small,2.0
11429,.5,cup slices,58
11430,1,cup slices,116
11430,1,"radish (7"" long)",338
11431,1,"cup, sliced",147
11432,1,cup,116
11435,1,"cup, cubes",140
11435,1,large,772
11435,1,medium,386
11435,1,small,192
11436,1,"cup, cubes",170
11436,1,"cup, mashed",240
11437,1,cup slices,133
11438,1,"cup, sliced",135
11439,1,cup,142
11439,1,"cup, undrained",236
11442,2,tbsp (1/8 cup),10.0
11444,2,tbsp (1/8 cup),10.0
11445,2,tbsp (1/8 cup),10.0
11446,10,sheets,26
11446,2,tbsp (1/8 cup),10.0
11447,1,flower,3.0
11447,1,cup flowers,20
11448,1,cup,104
11450,1,cup,256
11451,1,cup,180
11452,.5,cup,35
11452,10,sprouts,10.0
11453,1,cup,94
11457,1,cup,30
11457,1,bunch,340
11457,1,leaf,10.0
11457,1,package (10 oz),284
11458,1,cup,180
11459,1,cup,234
11461,1,cup,214
11463,1,cup,156
11463,1,package (10 oz),284
11464,.5,cup,95
11464,1,package (10 oz) yields,220
11467,1,cup sliced,127
11468,1,"cup, sliced",180
11468,.5,cup slices,90
11471,1,"cup, diced",210
11471,1,"cup, mashed",240
11471,1,cup slices,216
11471,1,slice,8.0
11471,1,can (303 x 406),241
11473,1,cup slices,130
11474,1,cup slices,192
11475,1,cup slices,130
11476,1,"cup, mashed",240
11476,1,"cup, sliced",180
11477,1,"cup, chopped",124
11477,1,"cup, sliced",113
11477,1,large,323
11477,1,medium,196
11477,1,slice,9.9
11477,1,small,118
11478,1,"cup, sliced",180
11478,.5,"cup, mashed",120
11479,.33,package (10 oz),95
11479,1,package (10 oz),284
11479,1,package (3 lb),1361
11480,1,cup,223
11481,1,cup,227
11482,1,"cup, cubes",140
11482,1,squash (4 inch dia),431
11483,1,"cup, cubes",205
11484,1,"cup, mashed",245
11485,1,"cup, cubes",140
11486,1,"cup, cubes",205
11487,.33,package (12 oz),113
11487,1,package (12 oz),340
11487,1,package (4 lb),1814
11488,1,"cup, mashed",240
11489,1,"cup, cubes",116
11490,1,"cup, cubes",205
11491,1,"cup, mashed",236
11492,1,"cup, cubes",101
11493,1,cup,155
11496,1,cup,192
11497,1,cup,266
11499,1,cup,255
11501,1,cup,156
11501,1,package (10 oz),284
11502,1,cup,170
11503,1,"cup, chopped",56
11503,1,shoot,13.0
11504,1,"cup, chopped",98
11505,1,"cup, chopped",35
11505,1,"leaf (12-1/4"" long)",16
11506,1,cup,64
11507,1,"cup, cubes",133
11507,1,"sweetpotato, 5"" long",130
11508,1,cup,200
11508,1,large,180
11508,1,"medium (2"" dia, 5"" long, raw)",114
11508,1,small,60
11510,1,"cup, mashed",328
11510,1,medium,151
11512,1,"cup, mashed",255
11512,1,cup pieces,200
11514,1,cup,255
11514,1,can (404 x 307),496
11516,1,"cup, cubes",176
11517,1,"cup, cubes",176
11518,1,"cup, sliced",104
11519,1,"cup, sliced",132
11520,1,cup,28
11520,1,"leaf (11"" x 6-1/2"")",10.0
11521,1,cup,145
11522,.5,cup slices,43
11522,1,shoot,83
11523,1,cup slices,140
11525,1,cup slices,125
11526,1,cup slices,137
11527,1,cup,180
11527,1,large,182
11527,1,medium,123
11527,1,slice or wedge,20
11527,1,small,91
11529,1,cup cherry tomatoes,149
11529,1,"cup, chopped or sliced",180
11529,1,Italian tomato,62
11529,1,cherry,17
11529,1,"large whole (3"" dia)",182
11529,1,"medium whole (2-3/5"" dia)",123
11529,1,"slice, medium (1/4"" thick)",20
11529,1,plum tomato,62
11529,1,"small whole (2-2/5"" dia)",91
11529,1,"slice, thick/large (1/2"" thick)",27
11529,1,wedge (1/4 of medium tomato),31
11529,1,"slice, thin/small",15.0
11530,1,cup,240
11530,2,medium,246
11531,1,cup,240
11531,1,tbsp,15.0
11531,1,can,190
11531,1,large,164
11531,1,medium,111
11531,1,small,82
11533,1,cup,255
11537,1,cup,241
11540,1,cup,243
11540,6,fl oz,182
11546,.25,cup,66
11546,1,cup,262
11546,1,tbsp,16
11546,1,can (6 oz),170
11547,1,cup,250
11547,1,can (29 oz) (401 x 411),822
11549,1,cup,245
11551,1,cup,245
11553,1,cup,245
11555,.5,cup,122
11555,1,"can, 15 oz (303 x 406)",425
11557,1,cup,250
11557,1,"can, 15 oz (303 x 406)",411
11559,1,cup,244
11559,1,"can, 15 oz (303 x 406)",425
11563,.5,"cup, chopped",71
11563,1,"frond (6-1/2"" long)",31
11564,1,"cup, cubes",130
11564,1,large,183
11564,1,medium,122
11564,1,slice,15.0
11564,1,small,61
11564,.5,"cup, cubes",65
11565,1,"cup, cubes",156
11565,1,"cup, mashed",230
11566,.333,"package, mashed (10 oz)",94
11566,1,"package, mashed (10 oz)",284
11567,1,cup,156
11568,1,"cup, chopped",55
11569,1,"cup, chopped",144
11570,.5,cup,117
11570,1,"can, 15 oz (303 x 406)",425
11574,.5,"cup, chopped or diced",82
11574,1,package (10 oz),284
11575,1,cup,164
11575,1,package (10 oz) yields,220
11576,.33,package (10 oz),95
11576,1,package (10 oz),284
11576,1,package (3 lb),1361
11577,1,cup,163
11578,1,cup,253
11578,6,fl oz,182
11579,1,cup,245
11581,1,cup,163
11583,.33,package (10 oz),95
11583,1,package (10 oz),284
11583,1,pack (2-1/2 lb),1134
11584,.5,cup,91
11584,1,package (10 oz) yields,275
11585,1,cup,254
11585,6,fl oz,182
11588,.5,cup slices,62
11588,4,waterchestnuts,36
11590,.5,cup slices,70
11590,4,waterchestnuts,28
11591,1,"cup, chopped",34
11591,1,sprig,2.5
11591,10,sprigs,25
11593,1,"cup, cubes",132
11593,1,waxgourd,5700
11594,1,"cup, cubes",175
11595,1,cup slices,44
11595,1,pod,16
11596,1,cup,62
11601,1,"cup, cubes",150
11602,1,"cup, cubes",136
11602,.5,"cup, cubes",68
11603,1,cup slices,120
11603,1,cup,130
11603,1,large,1200
11603,1,medium,659
11603,1,slice,6.0
11603,1,small,365
11605,1,cup slices,246
11609,1,cup slices,227
11613,1,"cup (1"" pieces)",89
11615,1,tbsp,0.2
11615,.25,cup,0.8
11616,1,"cup, chopped",133
11618,1,cup,100
11620,1,cup slices,100
11620,1,"pod (15-1/3"" long)",11.0
11621,1,cup slices,118
11622,1,"cup, chopped",67
11623,1,"cup, chopped",130
11624,1,tbsp,0.2
11624,.25,cup,0.8
11625,1,tbsp,0.4
11625,.25,cup,1.4
11626,1,cup,125
11632,1,"cup, chopped",136
11632,1,"cup, sliced",104
11632,1,pepper,22
11634,1,tbsp,0.4
11634,.25,cup,1.6
11637,.5,cup slices,50
11637,1,"radish (7"" long)",17
11640,1,tbsp,0.9
11640,.25,cup,3.6
11641,1,"cup, sliced",113
11641,1,large,323
11641,1,medium,196
11641,1,slice,9.9
11641,1,small,118
11642,1,"cup, sliced",180
11643,1,"cup, cubes",116
11644,1,"cup, cubes",205
11645,1,cup,228
11645,1,can (404 x 307),638
11647,1,cup,196
11649,1,cup,244
11649,1,"can, 15 oz (303 x 406)",425
11655,1,cup,236
11655,1,fl oz,29.5
11656,1,cup,250
11656,.667,cup (#6 scoop),167
11657,1,cup,210
11658,1,cup,136
11659,1,"piece (2-1/2"" x 2"" dia)",105
11660,1,cup,101
11667,1,cup,112
11667,1,tablespoon,7.0
11669,2,tbsp (1/8 cup),10.0
11670,1,pepper,45
11670,.5,"cup, chopped or diced",75
11671,1,cup,194
11672,1,"small 2-3/4 in. dia., 5/8 in. thick.",22
11672,1,"medium 3-1/4 in. x 3-5/8 in., 5/8 in. thick.",37
11674,1,potato large,299
11674,1,potato medium,173
11674,1,potato small,138
11675,1,"potato (2-3/4"" dia by 4-3/4"" long)",202
11676,1,cup,38
11677,1,tbsp chopped,10.0
11683,1,cup,74
11693,.5,cup,121
11695,1,"cup, chopped",158
11695,1,tomato,111
11696,1,"cup, chopped",139
11696,1,tomato,212
11697,1,"cup, sliced",120
11697,1,root,33
11698,1,"cup, chopped",51
11698,1,leaf,18
11707,.5,cup,122
11707,1,can (300 x 407),411
11715,1,cup,248
11715,1,can (303 x 406),454
11722,1,"cup 1/2"" pieces",100
11722,10,"beans (4"" long)",55
11724,1,cup,125
11726,.5,cup,120
11726,1,can (303 x 406),439
11727,.5,cup,120
11727,1,can (303 x 406),439
11728,.5,cup,120
11728,1,can (303 x 406),439
11729,1,cup,153
11729,10,beans,62
11729,1,can (303 x 406),262
11730,1,cup,121
11730,1,package (10 oz),284
11732,1,cup,135
11735,1,cup,246
11740,1,cup flowerets,71
11740,1,floweret,11.0
11741,1,stalk,114
11749,.5,"cup, shredded",35
11749,1,head,908
11750,.5,"cup, shredded",35
11750,1,head,908
11758,.5,cup slices,123
11758,1,can (303 x 406),454
11759,1,"cup, sliced",146
11759,1,"cup, mashed",228
11759,1,slice,2.8
11759,1,can (303 x 406),284
11771,1,cup,256
11771,1,can (303 x 406),482
11772,1,cup,256
11772,1,can (303 x 406),482
11773,1,cup,210
11773,1,can (303 x 406),340
11812,.5,cup,124
11812,1,can (303 x 406),482
11813,.5,cup,85
11813,1,can (303 x 406),313
11816,1,cup,255
11819,1,pepper,45
11819,.5,"cup, chopped or diced",75
11820,1,pepper,73
11820,.5,"cup, chopped or diced",68
11821,1,"cup, chopped",149
11821,1,"cup, sliced",92
11821,1,tablespoon,9.3
11821,1,"large (2-1/4 per pound, approx 3-3/4"" long, 3"" dia.)",164
11821,1,"medium (approx 2-3/4"" long, 2-1/2 dia.)",119
11821,1,small,74
11821,1,"ring (3"" dia., 1/4"" thick)",10.0
11823,1,"cup, strips",135
11823,1,tbsp,11.6
11823,.5,"cup, chopped",68
11840,10,strips,50
11840,1,package (9 oz) yields,198
11841,10,strip,74
11842,10,strips,65
11842,1,package (9 oz),255
11843,1,cup,245
11844,1,cup,245
11846,1,cup,245
11855,1,cup,234
11885,1,cup,240
11885,1,tbsp,15.0
11885,1,can,190
11885,1,large,164
11885,1,medium,111
11885,1,small,82
11885,.5,cup,120
11886,1,cup,243
11886,1,fl oz,30.4
11886,6,fl oz,182
11887,.25,cup,66
11887,1,cup,262
11887,1,tbsp,16
11887,1,can (6 oz),170
11888,1,cup,250
11888,1,can (29 oz) (401 x 411),822
11900,1,"ear, small (5-1/2"" to 6-1/2"" long)",73
11900,1,"ear, medium (6-3/4"" to 7-1/2"" long)",90
11900,1,"ear, large (7-3/4"" to 9"" long)",143
11900,1,cup kernels,154
11901,1,"ear, small (5-1/2"" to 6-1/2"" long)",89
11901,1,"ear, medium (6-3/4"" to 7-1/2"" long)",103
11901,1,"ear, large (7-3/4"" to 9"" long)",116
11901,1,cup cut,157
11901,1,"ear, yields",77
11903,1,cup,256
11903,1,can (303 x 406),482
11904,1,cup,256
11904,1,can (303 x 406),482
11905,1,cup,164
11905,1,can (303 x 406),298
11906,1,cup,256
11906,1,can (303 x 406),482
11907,1,cup,256
11907,1,can (303 x 406),482
11908,1,cup,210
11908,1,can (303 x 406),340
11909,1,cup,210
11909,1,can (303 x 406),340
11910,1,cup,165
11910,1,package (10 oz),284
11911,1,cup,165
11911,1,package (10 oz) yields,284
11913,1,cup kernels,165
11913,1,"ear, yields",125
11914,1,cup kernels,165
11914,1,"ear, yields",63
11916,1,"cup, halves",140
11916,.5,"cup, halves",70
11917,.33,package (10 oz),95
11917,1,package (10 oz),284
11918,1,"cup, chopped or strips",135
11918,1,"tablespoon, chopped",11.6
11921,1,cup chopped,106
11929,1,cup,210
11930,1,cup,210
11931,1,tbsp,0.4
11931,.25,cup,1.6
11932,1,cup,153
11932,10,beans,62
11932,1,can (303 x 406),262
11933,1,cup,153
11933,10,beans,62
11933,1,can (303 x 406),262
11934,1,cup,210
11935,1,tbsp,17
11935,1,packet,9.0
11935,1,cup,240
11937,1,"cup, chopped or diced",143
11937,1,cup (about 23 slices),155
11937,1,"large (4"" long)",135
11937,1,piece,65
11937,1,slice,7.0
11937,1,small,37
11937,1,spear,35
11939,1,cup sliced,121
11940,1,"cup, chopped",160
11940,1,cup sliced or chips,153
11940,1,"large Gherkin (3"" long)",35
11940,1,"Gherkin (2-3/4"" long)",25
11940,1,"midget Gherkin (2-1/8"" long)",6.0
11940,1,chip,7.5
11940,1,"small Gherkin (2-1/2"" long)",15.0
11940,1,spear Gherkin,20
11941,1,cup,155
11941,1,"large (4"" long)",135
11941,1,"medium (3-3/4"" long)",65
11941,1,slice,7.0
11941,1,small,37
11941,1,spear,30
11943,1,tbsp,12.0
11943,1,cup,192
11943,1,slice,1.0
11943,1,"pimiento, whole",66
11944,1,tbsp,15.0
11944,.5,cup,122
11945,1,tbsp,15.0
11945,1,packet (2/3 tbsp),10.0
11945,1,cup,245
11946,1,"cup, chopped or diced",143
11946,1,cup (about 23 slices),155
11946,1,"large (4"" long)",135
11946,1,"medium (3-3/4"" long)",65
11946,1,slice,6.0
11946,1,small,37
11946,1,spear,30
11947,1,medium,65
11947,1,slice,6.0
11948,1,slice,6.0
11948,1,medium,35
11948,1,small,15.0
11948,1,large,35
11948,1,"cup, sliced",170
11948,1,"cup, chopped or diced",160
11949,1,tbsp,17
11949,1,packet,9.0
11949,1,cup,240
11950,1,large,5.0
11950,1,medium,3.0
11950,1,cup whole,64
11950,1,cup sliced,65
11951,1,"pepper, large (3-3/4"" long, 3"" dia)",186
11951,10,strips,52
11952,1,"cup, shredded",40
11952,1,leaf,8.0
11953,1,large,16
11953,1,medium,11.0
11954,1,medium,34
11954,.5,"cup, chopped or diced",66
11955,1,cup,54
11955,1,piece,2.0
11956,1,cup,110
11956,1,piece,3.0
11957,1,"cup, sliced",87
11957,1,bulb,234
11958,1,tbsp,15.0
11958,.5,cup,122
11959,1,leaf,2.0
11959,.5,cup,10.0
11960,1,large,15.0
11960,1,medium,10.0
11961,1,cup,146
11961,1,piece,33
11962,1,cup,37
11962,1,pepper,0.5
11963,1,"cup, sliced",86
11964,1,cup,149
11964,1,pad,29
11965,1,cup,64
11965,1,floweret,25
11965,1,"head, large (6-7"" dia)",511
11965,1,"head, medium (5-6"" dia)",431
11965,1,"head, small (4"" dia)",325
11967,.2,head,90
11969,1,cup,88
11970,1,cup,109
11972,1,cup,67
11972,1,tbsp,4.8
11973,1,cup,126
11973,1,pod,6.1
11974,1,cup,14.0
11974,1,leaf,3.0
11975,1,leaf,4.0
11976,1,cup,124
11976,1,"small (4"" long)",33
11976,1,"medium (4-1/2"" long)",46
11976,1,"large (5"" long)",75
11977,1,"cup, chopped",105
11977,1,pepper,6.1
11978,1,pepper,17
11979,1,"cup, sliced",90
11979,1,pepper,14.0
11980,1,cup,139
11981,1,pepper,27
11982,1,pepper,7.0
11983,1,cup,245
11984,1,tbsp,0.8
11984,1,sprig,2.0
11985,1,"cup, chopped",23
11985,1,plant,22
11986,1,cup,44
11986,1,bunch,17
11987,1,large,148
11987,1,small,15.0
11987,1,cup sliced,86
11988,1,cup,28
11988,1,piece,4.5
11989,1,cup,182
11989,1,piece,5.5
11990,1,"cup, sliced",130
11990,1,root,169
11991,1,"cup, sliced",135
11991,1,root,305
11993,1,cup diced,70
11993,1,piece whole,1.1
11998,1,cup diced,86
11998,1,piece whole,84
12005,1,cup,160
12007,1,cup,94
12007,1,tbsp,5.0
12013,1,cup,32
12014,1,cup,129
12016,1,cup,118
12023,1,cup,144
12023,1,tbsp,9.0
12029,1,cup,128
12036,1,"cup, with hulls, edible yield",46
12036,1,cup,140
12037,1,cup,128
12038,1,cup,135
12039,1,cup,134
12040,1,tbsp,16
12041,1,cup,64
12041,1,tbsp,4.0
12061,1,"cup, whole",143
12061,1,"cup, sliced",92
12061,1,"cup, slivered",108
12061,1,"cup, ground",95
12061,1,almond,1.2
12062,1,cup whole kernels,145
12062,1,tbsp,9.1
12063,1,cup whole kernels,138
12065,1,cup whole kernels,157
12071,1,"cup, firmly packed",227
12078,1,"cup, whole",133
12078,1,kernel,5.0
12084,1,cup,120
12084,1,nutmeat,3.0
12085,1,"cup, halves and whole",137
12085,1,tbsp,8.6
12086,1,"cup, whole",129
12086,1,"cup, halves and pieces",129
12088,1,tbsp,16
12097,1,cup,145
12104,1,"cup, shredded",80
12104,1,medium,397
12104,1,"piece (2"" x 2"" x 1/2"")",45
12109,1,cup,85
12110,1,cup,77
12115,1,tbsp,15.0
12115,1,cup,240
12116,1,tbsp,19
12116,1,cup,296
12117,1,cup,240
12117,1,tbsp,15.0
12118,1,cup,226
12118,1,tbsp,15.0
12119,1,cup,240
12119,1,tbsp,15.0
12119,1,coconut yields,206
12120,1,"cup, chopped",115
12120,1,"cup, ground",75
12120,1,"cup, whole",135
12120,10,nuts,14.0
12129,1,cup (78 kernels),155
12130,1,cup,120
12130,1,nut,3.0
12131,1,"cup, whole or halves",134
12132,1,"cup, whole or halves",132
12135,1,cup,137
12137,1,cup,134
12138,1,cup,144
12142,1,"cup, chopped",109
12142,1,"cup, halves",99
12144,1,cup,110
12145,1,cup,120
12147,1,cup,135
12147,10,nuts,1.7
12149,10,nuts,1.0
12151,1,cup,123
12151,1,kernel,0.7
12152,1,cup,123
12152,1,kernel,0.7
12154,1,"cup, chopped",125
12154,1,tbsp,7.8
12155,1,"cup, chopped",117
12155,1,"cup, ground",80
12155,1,"cup, in shell, edible yield (7 nuts)",28
12155,1,cup shelled (50 halves),100
12155,1,cup pieces or chips,120
12160,1,cup,149
12160,1,tbsp,10.0
12163,1,cup,64
12166,1,tbsp,15.0
12167,1,cup,143
12167,10,kernels,84
12169,1,tbsp,16
12171,1,tbsp,14.0
12174,1,cup,108
12175,1,cup,155
12176,1,cup,240
12176,1,tbsp,15.0
12179,1,"cup, shredded",93
12179,1,package (7 oz),199
12195,1,tbsp,16
12195,1,cup,250
12198,1,tbsp,15.0
12201,1,cup,150
12201,1,tbsp,8.0
12201,1,tsp,2.7
12206,1,cup whole kernels,144
12220,1,"tbsp, whole",10.3
12220,1,"cup, whole",168
12220,1,"tbsp, ground",7.0
12220,1,"tsp, whole",3.4
12220,1,"tsp, ground",2.5
12516,1,cup,118
12529,1,cup,128
12537,1,cup,128
12538,1,cup,135
12539,1,cup,134
12540,1,tbsp,16
12563,1,cup whole kernels,138
12565,1,cup whole kernels,157
12585,1,"cup, halves and whole",137
12586,1,"cup, whole",129
12586,1,"cup, halves and pieces",129
12588,1,tbsp,16
12632,1,"cup, whole or halves",132
12635,1,cup,137
12637,1,cup,134
12637,10,"nuts, assorted",14.0
12638,1,cup,144
12644,1,cup,110
12652,1,cup,123
12652,1,kernel,0.7
12663,1,cup,64
12695,1,tbsp,16
12695,1,cup,250
12698,1,tbsp,15.0
13285,1,roast,647
13293,1,steak,679
13293,1,roast,960
13326,1,slice,68
13327,1,slice,81
13342,1,steak,56
13342,1,package,396
13344,3,slices,68
13344,1,"package (net weight, 12 oz)",340
13345,3,slices,34
13345,1,"package, cooked (yield from 12 oz raw product)",170
13347,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",320
13348,1,slice (3/4 oz),21
13350,10,slices,28
13353,1,"slice (1 oz) (4"" x 4"" x 3/32"" thick)",28
13355,1,"package, 2.5 oz",71
13355,1,slice (1 oz),28
13356,1,steak,473
13357,1,sausage,43
13358,1,slice (1 oz),28
13360,5,slices,21
13361,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",279
13364,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",242
13367,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",314
13368,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",264
13369,1,steak (Yield from 418 g raw meat),270
13370,1,steak (yield from 418g raw meat),270
13371,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",314
13372,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",232
13373,1,roast (yield from 1601 g raw meat),1166
13382,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",191
13388,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",214
13391,1,steak (yield from 233 g raw meat),233
13394,1,steak (yield from 296 g raw meat),233
13398,1,steak (yield from 290 g raw meat),185
13399,1,roast (yield from 600 g raw meat),489
13407,1,steak (yield from 290 g raw meat),185
13408,1,roast (yield from 600 g raw meat),489
13415,1,roast (yield from 436 g raw meat),346
13415,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",333
13418,1,roast (yield from 436 g raw meat),346
13418,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",330
13421,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",330
13424,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",320
13428,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",267
13434,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",261
13439,1,steak,117
13442,1,steak,119
13445,1,steak,119
13448,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 223 g)",150
13451,1,steak (yield from 518 g raw meat),384
13454,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",292
13464,1,steak,534
13478,1,steak,460
13486,1,roast,1289
13491,1,steak,277
13494,1,portion (yield from 1/2 lb raw meat ),139
13496,1,patty,77
13497,1,patty,70
13498,1,ounce,28
13500,1,steak,186
13519,1,steak,1438
13595,1,piece,1855
13598,1,steak,186
13647,1,steak,1027
13647,1,roast,1316
13805,1,steak,452
13863,1,steak,239
13904,1,piece,1855
13917,1,steak,164
13929,1,steak,608
13948,1,steak (yield from 475 g raw meat),383
13952,1,steak (yield from 295 g raw meat),233
13954,1,roast,261
13959,1,steak (yield from 381 g raw meat),277
13970,1,steak,188
13982,1,piece,289
13985,1,roast,569
14016,8,fl oz,240
14016,1,cup,240
14121,1,fl oz,29.6
14121,1,can or bottle (16 fl oz),474
14121,1,can or bottle (12 fl oz),355
14155,1,fl oz,30.5
14155,1,bottle (11 fl oz),336
14155,1,can or bottle (16 fl oz),488
14155,1,can or bottle (12 fl oz),366
14194,1,fl oz,34.3
14203,1,tsp,1.0
14203,1,packet,2.0
14209,1,fl oz,29.6
14209,6,fl oz,178
14209,1,cup (8 fl oz),237
14214,1,tsp,1.0
14214,1,packet,2.0
14215,1,fl oz,29.8
14222,1,"tsp, rounded",1.8
14223,1,fl oz,29.9
14236,1,tsp (1 serving),3.0
14237,1,fl oz,30.1
14355,1,fl oz,29.6
14355,6,fl oz,178
14355,1,cup (8 fl oz),237
14381,1,fl oz,29.6
14381,6,fl oz,178
14381,1,cup (8 fl oz),237
14411,1,fl oz,29.6
14411,1,cup 8 fl oz,237
14411,1,liter,1000
14412,1,fl oz,29.6
14412,1,cup 8 fl oz,237
14412,1,liter,1000
14421,6,fl oz,185
14429,1,fl oz,29.6
14429,1,cup 8 fl oz,237
14429,1,liter,1000
14429,3,ice cube (3/4 fl oz),64
14545,1,fl oz,29.6
14545,6,fl oz,178
14545,1,cup (8 fl oz),237
14555,1,fl oz,29.6
14555,1,cup,237
14555,1,ml,1.0
15002,1,anchovy,4.0
15002,1,can (2 oz),45
15002,5,anchovies,20
15003,1,fillet,79
15004,1,fillet,159
15005,1,fillet,150
15006,1,fillet,116
15007,1,fillet,32
15008,1,fillet,218
15009,1,fillet,170
15010,1,fillet,159
15011,1,fillet,87
15012,1,tbsp,16
15013,1,fillet,79
15015,1,fillet,231
15016,1,fillet,180
15017,1,can,312
15018,1,"piece (5-1/2"" x 1-1/2"" x 1/2"")",80
15019,1,fillet,116
15020,1,fillet,79
15021,1,fillet,87
15022,1,fillet,122
15023,1,fillet,204
15024,1,fillet,198
15025,1,fillet,204
15026,1,fillet,159
15027,1,"piece (4"" x 2"" x 1/2"")",57
15027,1,"stick (4"" x 1"" x 1/2"")",28
15028,1,fillet,163
15029,1,fillet,127
15030,1,piece,42
15031,1,fillet,259
15032,1,fillet,202
15033,1,fillet,193
15034,1,fillet,150
15036,.5,fillet,204
15037,.5,fillet,159
15038,.5,fillet,204
15039,1,fillet,184
15040,1,fillet,143
15041,1,cup,140
15041,1,"piece (1-3/4"" x 7/8"" x 1/2"")",15.0
15042,1,"fillet, large (7"" x 2-1/4"" x 1/4"")",65
15042,1,"fillet, medium (5"" x 1-3/4"" x 1/4"")",40
15042,1,"fillet, small (2-3/8"" x 1-3/8"" x 1/4"")",20
15043,1,fillet,184
15044,1,fillet,193
15045,.5,fillet,193
15046,1,fillet,112
15047,1,fillet,88
15048,1,cup,190
15048,1,can (15 oz),361
15049,.5,fillet,198
15050,1,fillet,225
15051,1,fillet,187
15052,1,fillet,146
15055,1,fillet,119
15056,1,fillet,93
15057,1,fillet,64
15058,1,fillet,50
15059,.5,fillet,176
15060,1,fillet,60
15061,1,fillet,46
15062,.5,fillet,198
15063,.5,fillet,155
15064,1,fillet,159
15065,.5,fillet,193
15066,1,fillet,77
15067,1,fillet,60
15068,1,fillet,112
15069,1,fillet,88
15070,1,fillet,191
15071,1,fillet,149
15072,1,tbsp,14.0
15072,1,"can (8 oz), solids and liquid",227
15074,.5,fillet,193
15076,.5,fillet,198
15077,1,"cup, cooked",136
15078,.5,fillet,198
15079,.5,fillet,198
15080,1,can,369
15081,.5,fillet,198
15082,.5,fillet,155
15083,.5,fillet,159
15084,1,can,411
15085,.5,fillet,198
15086,.5,fillet,155
15087,1,can,337
15088,1,"cup, drained",149
15088,1,can (3.75 oz),92
15088,1,"small (2-2/3"" x 1/2"" x 1/4"")",12.0
15088,2,sardines,24
15089,1,cup,89
15089,1,can,370
15089,1,sardine,38
15090,1,fillet,64
15090,1,cup,166
15091,1,fillet,129
15092,1,fillet,101
15093,1,fillet,238
15094,1,fillet,184
15097,1,fillet,238
15098,1,fillet,186
15101,1,fillet,218
15102,1,fillet,170
15103,1,fillet,64
15105,1,"cup, cooked",136
15105,1,"piece (4-1/2"" x 2-1/8"" x 7/8"")",145
15107,1,fillet,159
15108,1,fillet,48
15110,1,"piece (4-1/2"" x 2-1/8"" x 7/8"")",136
15111,1,piece,106
15112,.5,fillet,193
15113,.5,fillet,150
15114,1,fillet,79
15115,1,fillet,159
15116,1,fillet,143
15119,1,"cup, solid or chunks",146
15119,1,can,171
15119,1,"can (12.5 oz), drained",321
15121,1,can,165
15121,1,"cup, solid or chunks",154
15121,1,"can (12.5 oz), drained",315
15123,.5,fillet,198
15124,1,can,178
15126,1,can,172
15128,1,cup,205
15129,.5,fillet,204
15130,1,fillet,198
15131,1,"cup, cooked",136
15132,1,fillet,92
15133,1,fillet,72
15134,.5,fillet,153
15135,.5,fillet,187
15136,1,leg,172
15137,1,leg,134
15139,1,crab,21
15140,1,"cup, flaked and pieces",118
15140,1,cup (not packed),135
15141,1,cup,135
15141,1,"can (6.5 oz), drained",125
15142,1,cake,60
15143,1,crab,163
15145,8,crayfish,27
15147,1,lobster,150
15148,1,cup,145
15149,1,medium,6.0
15149,1,small,5.0
15149,4,large,28
15150,4,large,30
15151,4,large,22
15152,1,cup,128
15152,1,"can (4.5 oz), drained",128
15152,10,shrimp,32
15154,1,lobster,209
15157,1,large,20
15157,1,medium,14.5
15157,1,small,9.0
15157,1,cup (with liquid and clams),227
15158,20,small,188
15159,20,small,190
15160,1,cup,160
15162,1,cup,240
15164,1,cup,150
15164,1,large,20
15164,1,medium,16
15164,1,small,10.0
15167,6,medium,84
15167,1,cup,248
15168,6,medium,88
15169,6,medium,42
15170,1,"cup, undrained",248
15170,1,"can (12 oz), oysters and liquid",272
15170,1,oyster,8.0
15170,1,"cup, drained",162
15171,1,medium,50
15172,1,unit 2 large or 5 small,30
15173,2,large,31
15180,1,can,369
15181,1,can,454
15182,1,can,369
15183,1,can,171
15184,1,can,165
15185,1,can,178
15186,1,can,172
15187,1,fillet,62
15188,1,fillet,124
15189,1,fillet,117
15190,1,fillet,90
15191,1,fillet,25
15192,1,fillet,90
15193,1,fillet,95
15194,1,fillet,159
15195,1,fillet,154
15196,.5,fillet,159
15197,1,fillet,144
15198,1,fillet,151
15199,.5,fillet,151
15200,.5,fillet,154
15201,1,fillet,176
15204,1,fillet,124
15205,.5,fillet,151
15206,.5,fillet,137
15208,.5,fillet,151
15209,.5,fillet,154
15210,.5,fillet,154
15211,.5,fillet,154
15212,.5,fillet,124
15213,1,fillet,50
15214,1,fillet,186
15215,1,fillet,144
15216,1,fillet,50
15217,1,fillet,124
15218,1,fillet,37
15219,1,fillet,62
15220,.5,fillet,154
15222,.5,fillet,159
15223,1,fillet,154
15224,.5,fillet,119
15225,.5,fillet,146
15226,1,crab,127
15228,1,lobster,163
15231,1,medium,25
15233,1,fillet,143
15234,1,fillet,159
15235,1,fillet,143
15236,.5,fillet,198
15237,.5,fillet,178
15238,1,fillet,159
15239,1,fillet,143
15240,1,fillet,79
15241,1,fillet,71
15242,8,crayfish,27
15244,6,medium,59
15245,6,medium,84
15246,6,medium,59
15247,.5,fillet,178
15250,1,"cup, sliced",127
15253,1,can total can contents,417
15260,1,can drained solids (total),315
15261,1,fillet,116
15262,1,fillet,87
15264,1,"can drained solids, bone and skin removed",247
15265,1,"can drained solids, bone and skin removed",242
15274,1,filet,149
15274,1,fish,332
16001,1,cup,197
16002,1,cup,230
16003,1,cup,296
16004,1,slice,14.0
16005,1,cup,253
16006,1,cup,254
16007,1,cup,266
16008,1,cup,259
16009,1,cup,253
16010,1,cup,249
16011,1,cup,246
16014,1,cup,194
16014,1,tbsp,12.1
16015,1,cup,172
16016,1,cup,184
16017,1,cup,185
16018,1,cup,240
16019,1,cup,195
16020,1,cup,177
16021,1,cup,260
16022,1,cup,184
16023,1,cup,177
16024,1,cup,183
16025,1,cup,177
16026,1,cup,262
16027,1,cup,184
16028,1,cup,177
16028,1,tbsp,11.0
16029,1,cup,256
16030,1,cup,184
16031,1,cup,177
16032,1,cup,184
16032,1,tbsp,12.2
16033,1,cup,177
16033,1,tbsp,11.0
16034,1,cup,256
16034,1,tbsp,16
16034,1,can,436
16035,1,cup,184
16036,1,cup,177
16037,1,cup,208
16038,1,cup,182
16039,1,cup,262
16040,1,cup,210
16041,1,cup,169
16042,1,cup,193
16042,1,tbsp,12.0
16043,1,cup,171
16043,1,tbsp,10.6
16044,1,cup,240
16044,1,can,442
16045,1,cup,215
16046,1,cup,179
16047,1,cup,196
16048,1,cup,177
16049,1,cup,202
16049,1,tbsp,12.6
16050,1,cup,179
16050,1,tbsp,11.2
16051,1,cup,262
16052,1,cup,150
16052,1,tbsp,9.4
16053,1,cup,170
16054,1,cup,256
16055,1,cup,103
16055,1,tbsp,6.0
16056,1,cup,200
16056,1,tbsp,12.5
16057,1,cup,164
16058,1,cup,240
16058,1,can (total can contents),448
16059,1,cup,256
16059,1,tbsp,16
16060,1,cup,167
16061,1,cup,171
16062,1,cup,167
16062,1,tbsp,10.5
16063,1,cup,171
16064,1,cup,240
16065,1,cup,240
16067,1,cup,210
16068,1,cup,194
16069,1,cup,192
16069,1,tablespoon,12.0
16070,1,cup,198
16070,1,tbsp,12.3
16071,1,cup,178
16071,1,tbsp,11.1
16072,1,cup,188
16072,1,tbsp,11.7
16073,1,cup,241
16074,1,cup,202
16075,1,cup,182
16076,1,cup,180
16077,1,cup,166
16078,1,cup,196
16079,1,cup,177
16080,1,cup,207
16080,1,tbsp,13.0
16081,1,cup,202
16082,1,cup,140
16083,1,cup,207
16084,1,cup,180
16085,1,cup,197
16086,1,cup,196
16086,1,tbsp,12.2
16087,1,cup,146
16089,1,"cup, chopped",144
16090,1,peanut,1.0
16091,1,cup,146
16092,1,cup,147
16093,1,cup,146
16094,1,cup,144
16095,1,cup,146
16096,1,cup,143
16097,2,tbsp,32
16097,1,cup,258
16098,2,tbsp,32
16098,1,cup,258
16099,1,cup,60
16100,1,cup,60
16101,1,cup,205
16102,1,cup,168
16104,1,cup,144
16104,1,strip,5.0
16106,1,cup,88
16107,1,link,25
16107,1,patty,38
16107,1,slice,28
16108,1,cup,186
16109,1,cup,172
16109,1,tbsp,10.7
16110,1,cup,172
16111,1,cup,93
16112,1,tbsp,17
16112,1,cup,275
16113,1,cup,175
16114,1,cup,166
16115,1,"cup, stirred",84
16115,1,tbsp,5.2
16116,1,"cup, stirred",85
16117,1,cup,105
16117,1,tbsp,6.6
16118,1,"cup, stirred",88
16118,1,tbsp,5.5
16119,1,cup,122
16120,1,cup,243
16120,1,fl oz,30.6
16123,1,tbsp,16
16123,1,tsp,5.3
16123,1,cup,255
16124,1,tbsp,18
16124,1,tsp,6.0
16125,1,tbsp,18
16125,1,tsp,6.0
16125,.25,cup,58
16126,.5,cup,126
16126,.25,block,81
16126,.2,block,91
16127,1,"piece (2-1/2"" x 2-3/4"" x 1"")",120
16127,1,"cup (1/2"" cubes)",248
16127,.25,block,116
16127,.2,block,90
16128,1,piece,17
16129,1,piece,13.0
16130,1,cup,122
16132,1,block,11.0
16133,1,cup,167
16134,1,cup,171
16135,1,cup,182
16136,1,cup,172
16137,1,tablespoon,15.0
16137,1,cup,246
16138,1,"patty (approx 2-1/4"" dia)",17
16139,1,cup,243
16139,1,fl oz,30.6
16144,1,cup,192
16145,1,can drained solids,266
16146,1,can drained solids,277
16147,1,pattie,70
16149,2,tbsp,31
16150,2,tablespoon,36
16157,1,cup,92
16158,1,tbsp,15.0
16158,1,cup,246
16159,.2,block,91
16160,.25,block,122
16166,1,cup,243
16166,1,fl oz,30.6
16168,1,cup,243
16168,1,fl oz,30.6
16171,1,cup,242
16171,1,can,444
16172,1,cup,231
16172,1,can,445
16173,1,cup,233
16173,1,tbsp,15
16222,1,cup,243
16225,1,cup,243
16227,1,cup,243
16228,1,cup,243
16229,1,cup,243
16230,1,cup,243
16231,1,cup,243
16316,1,cup,240
16326,1,cup,262
16335,1,cup cup rinsed solids,158
16337,1,cup,256
16337,1,can total can contents,436
16345,1,cup,169
16345,1,can,258
16347,1,cup,240
16347,1,can total can contents,442
16358,1,can drained,253
16359,1,"can drained, rinsed",254
16359,1,"cup drained, rinsed",152
16360,1,cup,240
16360,1,can total can contents,448
16389,1,"cup,",144
16390,1,cup,146
16390,1,peanut,1.0
16392,1,cup,147
16394,1,cup,144
16396,1,cup,143
16397,2,tbsp,32
16397,1,cup,258
16398,2,tbsp,32
16398,1,cup,258
16399,1,tbsp,16
16403,1,cup,238
16403,1,tablespoon,16
16410,1,cup,172
16424,1,tbsp,14.2
16424,1,tsp,4.5
16424,1,cup,255
16425,1,tbsp,15
16425,1,tsp,4.9
16425,.25,cup,58
16426,.5,cup,126
16426,.25,block,81
16427,.5,cup,124
16427,.25,block,116
16428,1,piece,17
16429,1,piece,13.0
16432,1,block,11.0
17002,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",242
17004,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",187
17008,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",148
17010,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",128
17012,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",265
17014,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",218
17016,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",269
17018,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",238
17020,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",262
17022,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",201
17023,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 120 g)",95
17024,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 120 g)",64
17025,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",269
17026,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 120 g)",65
17027,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 120 g)",46
17028,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",193
17030,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",229
17031,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",255
17033,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",147
17034,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",159
17036,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",218
17037,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",248
17038,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",269
17040,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",174
17041,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",202
17042,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",217
17043,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",133
17044,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",70
17045,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",93
17046,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",286
17047,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",101
17048,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",55
17049,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 160 g)",74
17050,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",224
17052,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",209
17053,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",252
17054,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",258
17056,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",168
17057,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",207
17058,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",210
17089,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",209
17091,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",192
17100,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",267
17102,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",289
17103,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",351
17104,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 195 g)",125
17105,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 195 g)",80
17106,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",229
17107,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 195 g)",113
17108,1,"chop, excluding refuse (yield from 1 raw chop, with refuse, weighing 195 g)",69
17109,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",208
17111,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",177
17112,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",240
17114,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",163
17115,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",215
17117,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",191
17118,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",258
17120,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",182
17121,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",251
17122,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 385 g)",304
17123,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 385 g)",173
17124,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",283
17125,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 385 g)",289
17126,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 385 g)",160
17127,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",272
17129,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",186
17130,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",244
17132,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",174
17133,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",236
17135,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",205
17136,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",269
17138,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",183
17139,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",251
17145,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17147,1,"piece, cooked (yield from 1 lb raw meat, boneless)",277
17149,1,patty (cooked from 4 oz raw),85
17151,1,"piece, cooked (yield from 1 lb raw meat, boneless)",313
17153,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17157,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17159,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17161,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17163,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17165,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17167,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17169,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17171,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17173,1,"piece, cooked (yield from 1 lb raw meat, boneless)",340
17175,1,"piece, cooked (yield from 1 lb raw meat, boneless)",313
17178,1,"piece, cooked (yield from 1 lb raw meat, boneless)",313
17179,1,"piece, cooked (yield from 1 lb raw meat, boneless)",299
17181,1,"piece, cooked (yield from 1 lb raw meat, boneless)",299
17184,1,"piece, cooked (yield from 1 lb raw meat, boneless)",313
17203,1,slice,80
17204,1,slice,67
17229,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",148
17248,1,"steak, excluding refuse (yield from 1 raw steak, with refuse, weighing 102 g)",59
17272,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",283
17273,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",291
17274,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",274
17275,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",237
17277,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",194
17279,1,"piece, cooked, excluding refuse (yield from 1 lb raw meat with refuse)",223
17330,1,patty,113
17331,1,patty ( yield from 112.7 g raw meat ),87
17332,1,steak ( yield from 309.7 g raw meat ),194
17333,1,roast ( yield from 1247 g raw meat ),774
17334,1,roast,1237
17335,1,steak ( yield from 232.8 g raw meat ),179
17336,1,steak,180
17337,1,steak,489
17338,1,patty ( yield from 102.2 g raw meat ),102
17339,1,patty ( yield from 104.1 g raw meat ),95
17340,1,steak ( yield from 148.1 g raw meat ),114
17341,1,steak ( yield from 233.1 g raw meat ),176
17342,1,steak ( yield from 123.5 g raw meat ),92
17343,1,patty (cooked from 4 oz raw),85
17344,1,patty,93
17345,1,steak,54
17346,1,roast,293
17347,1,roast ( yield from 271.8 g raw meat ),202
17348,1,steak ( yield from 134.9 g raw meat ),102
18001,1,"mini bagel (2-1/2"" dia)",26
18001,1,"small bagel (3"" dia)",69
18001,1,"medium bagel (3-1/2"" to 4"" dia)",105
18001,1,"large bagel (4-1/2"")",131
18002,1,"mini bagel (2-1/2"" dia)",24
18002,1,"small bagel (3"" dia)",65
18002,1,"medium bagel (3-1/2"" to 4"" dia)",99
18002,1,"large bagel (4-1/2"")",123
18003,1,"mini bagel (2-1/2"" dia)",26
18003,1,"small bagel (3"" dia)",69
18003,1,"medium bagel (3-1/2"" to 4"" dia)",105
18003,1,"large bagel (4-1/2"" dia)",131
18005,1,"mini bagel (2-1/2"" dia)",26
18005,1,"small bagel (3"" dia)",69
18005,1,"medium bagel (3-1/2"" to 4"" dia)",105
18005,1,"large bagel (4-1/2"" dia)",131
18006,1,"mini bagel (2-1/2"" dia)",24
18006,1,"small bagel (3-1/2"" to 4""dia)",65
18006,1,"medium bagel (4"" dia)",99
18006,1,"large bagel (4-1/2"" dia)",123
18007,1,"mini bagel (2-1/2"" dia)",26
18007,1,"small bagel (3"" dia)",69
18007,1,"medium bagel (3-1/2"" to 4"" dia)",105
18007,1,"large bagel (4-1/2"" dia)",131
18009,1,large,77
18009,1,medium,51
18009,1,small,35
18009,1,"biscuit (2-1/2"" dia)",35
18010,1,"cup, purchased",120
18010,1,"cup, homemade",114
18010,1,"cup, poured from box",128
18010,1,"cup, spooned into cup",120
18013,1,"biscuit (2-1/4"" dia)",21
18014,1,biscuit,58
18014,1,biscuit,43
18014,1,package,398
18015,1,"biscuit (2-1/2"" dia)",27
18016,1,"biscuit (4"" dia)",101
18016,1,"small (1-1/2"" dia)",14.0
18016,1,"biscuit (2-1/2"" dia)",60
18017,1,"biscuit (2-1/2"" dia)",44
18019,1,slice,60
18021,1,slice,45
18022,1,package (8.5 oz),241
18023,1,muffin,51
18023,1,piece,60
18024,1,piece,65
18025,1,"slice, large or thick",30
18025,1,"slice, regular",25
18025,1,"slice regular, crust not eaten",12.2
18025,1,slice,25
18025,1,"slice, thin",20
18025,1,"slice thin, crust not eaten",9.4
18027,1,"slice (5"" x 3"" x 1/2"")",40
18028,1,"slice (5"" x 3"" x 1/2"")",37
18029,1,"slice, small (2"" x 2-1/2"" x 1-3/4"")",32
18029,1,"slice, medium (4"" x 2-1/2"" x 1-3/4"")",64
18029,1,"slice, large (6"" x 2-1/2"" x 1-3/4"")",96
18030,1,"slice, small",29
18030,1,"slice, medium",59
18030,1,"slice, large",88
18033,1,"slice, large (4-1/2"" x 3-1/4"" x 3/4"")",30
18033,1,"slice, medium",20
18033,1,"slice, small (3-1/4"" x 2-1/2"" x 1/2"")",10.0
18035,1,slice regular,26
18035,1,slice large,41
18036,1,slice regular,24
18036,1,slice large,38
18037,1,slice,30
18038,1,slice,27
18039,1,slice,27
18040,1,slice,25
18041,1,"pita, large (6-1/2"" dia)",60
18041,1,"pita, small  (4"" dia)",28
18042,1,"pita, large (6-1/2"" dia)",64
18042,1,"pita, small  (4"" dia)",28
18043,1,slice,19
18044,1,"slice, regular",26
18044,1,"slice, snack-size",7.0
18044,1,"slice, thin",20
18044,1,"slice (5"" x 4"" x 3/8"")",32
18045,1,"slice (5"" x 4"" x 3/8"")",29
18047,1,"slice, large",32
18047,1,slice,26
18047,1,"slice, thin",23
18048,1,"slice, large",29
18048,1,slice,24
18048,1,"slice, thin",21
18059,1,slice,27
18060,1,"slice, regular",32
18060,1,"slice, snack-size",7.0
18060,1,"slice, thin",25
18061,1,"slice, large",29
18061,1,"slice, regular",24
18061,1,"slice, thin",18
18064,1,slice,29
18065,1,slice,24
18066,1,slice,36
18068,1,slice,28
18069,1,slice,28
18069,1,"cup, crumbs",45
18069,1,"cup, cubes",35
18069,1,"slice, large",30
18069,1,slice,25
18069,1,slice crust not eaten,12.0
18069,1,"slice, thin",20
18069,1,"slice thin, crust not eaten",9.0
18069,1,"slice, very thin",15.0
18070,1,"cup, crumbs",45
18070,1,"cup, cubes",42
18070,1,"slice, large",27
18070,1,slice crust not eaten,11.0
18070,1,"slice, thin",17
18070,1,"slice thin, crust not eaten",8.0
18070,1,"slice, very thin",13.0
18070,1,slice,22
18071,1,slice,44
18073,1,slice,42
18073,1,"slice, thin (3-3/4"" x 5"" x 3/8"")",33
18075,1,slice,32
18076,1,slice,25
18077,1,"slice, regular (4"" x 5"" x 3/4"")",46
18077,1,"slice, thin (3-3/4"" x 5"" x 3/8"")",33
18078,1,slice,42
18078,1,"slice, thin (3-3/4"" x 5"" x 3/8"")",30
18079,1,cup,108
18080,1,"cup, small pieces",46
18080,1,"stick, small (approx 4-1/4"" long)",5.0
18080,1,"stick (7-5/8"" x 5/8"")",10.0
18080,1,"stick (9-1/4"" x 3/8"")",6.0
18081,1,package (6 oz),170
18082,.5,cup,100
18084,1,package (6 oz),170
18085,.5,cup,100
18155,1,cookie,5.0
18172,1,cookie,7.0
18172,1,"large (approx 3-1/2"" to 4"" dia)",32
18173,1,"cup, crushed",84
18173,1,large rectangular piece or 2 squares or 4 small rectangular pieces,14.0
18173,1,"cracker (2-1/2"" square)",7.0
18174,3,pieces,27
18175,1,"anisette sponge (4"" x 1-1/8"" x 7/8"")",13.0
18175,1,"breakfast treat (approx 4"" x 2"" x 7/8"")",24
18175,1,ladyfinger,11.0
18178,1,large,18
18185,1,cookie,15.0
18186,1,cookie,15.0
18192,1,"cookie (1-5/8"" square)",8.0
18193,1,"cookie (2"" dia)",14.0
18211,1,sheet,245
18211,1,shell,40
18214,1,"cup, bite size",62
18214,1,"cup, crushed",72
18214,1,gold fish,0.6
18214,1,"bag, single serving",28
18214,1,snack stick,2.0
18214,1,"cracker (1"" square)",1.0
18215,1,"cup, crushed",83
18215,6,cracker,39
18215,1,sandwich,6.5
18216,1,"cup, crushed",55
18216,1,crispbread,10.0
18216,1,"wafer, thin",2.0
18216,1,wafer,10.0
18217,1,matzo,28
18218,1,matzo,28
18219,1,matzo,28
18220,1,cup pieces,30
18220,1,"cup, rounds",33
18220,1,melba round,3.0
18220,1,"piece (3-3/4"" x 1-3/4"" x 1/8"")",5.0
18221,1,toast,5.0
18222,1,toast,5.0
18223,1,cracker,11.0
18224,1,rusk,10.0
18225,1,"cracker, sandwich",7.0
18226,1,"cup, crushed",61
18226,1,"cracker (4-1/2"" x 2-1/2"" x 1/8"")",11.0
18226,1,"cracker, triple",25
18227,1,"cracker, triple",22
18228,5,crackers,14.9
18228,1,"cup, crushed",70
18228,5,crackers square (1 serving),15.0
18228,1,cracker square,3.0
18228,1,"cracker, round large",10.0
18228,1,"cracker, oyster",1.0
18228,1,"cracker, rectangle",6.0
18228,1,cup oyster crackers,45
18229,5,crackers,16
18229,5,"crackers, regular size, round (1 serving)",16
18229,1,"cracker, round",3.2
18229,1,"cracker, rectangular",4.0
18229,1,cup crushed,52
18230,1,"cracker, sandwich",7.0
18231,1,"cracker, sandwich",7.0
18232,1,"cracker, thin square",2.0
18232,1,"cup, crushed",83
18233,1,"cracker, sandwich",7.0
18234,1,"cracker, sandwich",7.0
18235,1,cracker,4.6
18235,1,"cup, crushed",94
18236,1,cup,115
18239,1,"croissant, mini",28
18239,1,"croissant, small",42
18239,1,"croissant, medium",57
18239,1,"croissant, large",67
18240,1,"croissant, medium",57
18241,1,"croissant, small",42
18241,1,"croissant, medium",57
18241,1,"croissant, large",67
18242,1,cup,30
18243,1,cup,40
18243,1,"package, fast food",10.0
18243,4,cubes,1.0
18258,1,muffin,57
18259,1,muffin,52
18260,1,muffin,66
18261,1,muffin,61
18262,1,muffin,57
18263,1,muffin,52
18264,1,muffin,57
18265,1,muffin,52
18266,1,muffin,66
18267,1,muffin,61
18270,1,cup,152
18270,1,hush puppy,22
18289,.333,cup,52
18289,1,"cup, poured from box",130
18290,1,"pancake (4"" dia)",38
18290,1,"pancake (6"" dia)",77
18291,1,"cup, poured from box",112
18292,1,"pancake (4"" dia)",38
18292,1,"pancake (6"" dia)",77
18330,1,"piece (1/8 of 9"" crust)",30
18330,1,"pie shell (9"" dia)",210
18330,1,tart shell,22
18330,1,"crust, single 9""",239
18332,1,package (10 oz),284
18333,1,"piece (1/8 of 9"" crust)",20
18333,1,"crust, single 9""",160
18334,1,"piece (1/8 of 9"" crust)",18
18334,1,pie crust (average weight of 1 frozen crust),173
18335,1,pie crust (average weight of 1 baked crust),154
18336,1,"piece (1/8 of 9"" crust)",23
18336,1,"crust, single 9""",180
18337,1,shell,47
18338,1,sheet dough,19
18339,1,package (6 oz),170
18342,1,roll (1 oz),28
18342,1,"each (pan, dinner, or small roll) (2"" square, 2"" high)",25
18342,1,"roll (hamburger, frankfurter, onion roll, bun, large roll)",43
18342,1,roll (foot long frankfurter roll),86
18344,1,"roll (2-1/2"" dia)",35
18345,1,roll,33
18346,1,"large (approx 3-1/2"" to 4"" dia)",43
18346,1,medium,36
18346,1,"small (2-3/8"" dia)",28
18347,1,roll (1 oz),28
18348,1,roll (1 oz),28
18348,1,"roll (hamburger, frankfurter roll)",43
18348,1,"roll, large submarine, hoagie",135
18348,1,"medium (2-1/2"" dia)",36
18348,1,"roll medium submarine, hoagie",94
18348,1,"roll (small submarine, hoagie roll)",65
18349,1,roll,38
18350,1,roll,42
18350,1,package,328
18351,1,roll,43
18353,1,"roll (3-1/2"" dia)",57
18360,1,shell,12.9
18360,1,taco,12.7
18360,1,"medium (approx 5"" dia)",13.3
18360,1,"large (6-1/2"" dia)",21
18360,1,"miniature (3"" dia)",5.0
18363,1,enchilada,19
18363,1,tortilla,24
18364,1,tortilla,47
18364,1,"tortilla medium (approx 6"" dia)",30
18364,1,package,407
18364,1,"tortilla (approx 10"" dia)",72
18364,1,"tortilla (approx 12"" dia)",117
18364,1,"tortilla (approx 7-8"" dia)",49
18368,1,"wrapper, eggroll (7"" square)",32
18368,1,"wrapper, wonton (3-1/2"" square)",8.0
18369,1,tsp,4.6
18369,.5,tsp,2.3
18370,1,tsp,4.6
18370,.5,tsp,2.3
18372,1,tsp,4.6
18372,.5,tsp,2.3
18373,1,tsp,3.0
18373,.5,tsp,1.5
18374,1,cake (0.6 oz),17
18375,1,tsp,4.0
18375,1,tbsp,12.0
18375,1,packet,7.2
18376,1,cup,120
18383,1,slice,17
18384,1,slice,25
18385,1,slice,25
18396,1,"large roll or bun (3-1/2"" dia)",43
18396,1,"roll (2-1/2"" dia)",35
18398,1,"piece (1/8 of 9"" crust)",28
18398,1,"crust, single 9""",223
18399,1,"piece (1/8 of 9"" crust)",30
18399,1,"crust, single 9""",244
18400,1,matzo,28
18401,1,cup,129
18401,1,"crust, single 9""",176
18401,1,"piece (1/8 of 9"" crust)",22
18402,1,"piece (1/8 of 9"" crust)",24
18402,1,"crust, single 9""",194
18406,1,"mini bagel (2-1/2"" dia)",26
18406,1,"small bagel (3"" dia)",69
18406,1,"medium bagel (3-1/2"" to 4"" dia)",105
18406,1,"large bagel (4-1/2"" dia)",131
18421,1,cookie,5.0
18423,1,"anisette sponge (4"" x 1-1/8"" x 7/8"")",13.0
18423,1,"breakfast treat (approx 4"" x 2"" x 7/8"")",24
18423,1,ladyfinger,11.0
18424,1,"cup, crushed",70
18424,1,cup pieces,30
18424,1,"cup, rounds",33
18424,1,melba round,3.0
18424,1,"piece (3-3/4"" x 1-3/4"" x 1/8"")",5.0
18424,1,toast,5.0
18425,1,cup oyster crackers,45
18425,1,cracker,3.0
18425,1,"cracker, round large",10.0
18425,1,"cracker, oyster",1.0
18425,1,"cracker, rectangle",6.0
18426,1,cracker,3.0
18427,1,"cup, bite size",62
18427,1,"cup, crushed",72
18427,1,"cracker, rectangular",4.0
18427,1,"cracker, oval",3.0
18427,1,"cracker, round",3.0
18428,1,"cup, crushed",83
18428,1,cracker,2.0
18428,1,"cracker, thin square",2.0
18429,1,"cup, crushed",94
18429,1,cracker,4.0
18429,1,"cracker, square",4.0
18437,1,muffin,57
18438,1,muffin,57
18439,1,muffin,57
18446,1,"crust, single 9""",142
18446,1,"piece (1/8 of 9"" crust)",16
18448,1,"medium (approx 5"" dia)",13.0
18448,1,"miniature (3"" dia)",5.0
18449,1,"tortilla, medium (approx 6"" dia)",26
18450,1,"tortilla, medium (approx 6"" dia)",32
18450,1,"tortilla (approx 10"" dia)",72
18450,1,"tortilla (approx 12"" dia)",117
18450,1,"tortilla (approx 7-8"" dia)",49
18459,1,tart,52
18927,6,cracker 1 cracker = 6.5g,39
18927,1,sandwich,6.5
18933,1,"waffle round (4"" dia)",33
18933,1,"waffle square (4"" square)",33
18934,1,waffle,35
18935,1,"waffle, round (4""dia)",32
18945,1,pie crust (average weight),225
18946,1,pie crust,198
18947,1,pie crust (average weight),202
18948,1,pie crust (average weight),229
18949,1,cracker,4.2
18950,1,cracker,1.8
18952,1,piece,12.3
18952,3,"pieces (mean serving weight, aggregated over brands)",37
18953,1,cake square (average weight of whole item),399
18955,1,slice (average weight of 1 slice),63
18963,1,slice presliced,43
18963,1,slice,59
18964,1,bun,65
18967,1,slice,28
18968,1,bagel,98
18970,1,tortilla,49
18970,1,package,484
18971,1,slice,32
18972,1,slice,48
18973,1,piece,57
19013,1,package,27
19013,1,packet (.75 oz),21
19014,1,large,21
19014,1,small,14.0
19070,3,pieces,16
19071,1,bar (3 oz),87
19074,1,package (2.5 oz),71
19074,1,piece,10.1
19076,1,piece,6.6
19076,1,bar 2.25 oz,64
19078,1,"cup, grated",132
19079,1,cup chips,170
19080,1,cup large chips,182
19080,1,cup mini chips,173
19080,1,cup chips (6 oz package),168
19081,1,bar (1.45 oz),41
19083,1,"patty, large",43
19083,1,"patty, small",11.0
19085,1,cup chips,170
19086,1,cup chips,168
19087,1,bar (3 oz),85
19087,1,tbsp,14.0
19087,1,cup chips,170
19097,.5,cup (4 fl oz),74
19097,1,bar (2.75 fl oz),66
19106,1,cup gumdrops,182
19106,10,gumdrops,36
19106,10,gummy bears,22
19106,10,gummy dinosaurs,63
19106,10,gummy fish,50
19106,10,gummy worms,74
19106,1,spice stick,9.5
19106,1,spice drop,24
19106,1,"gumdrop, small (1/2"" dia)",3.2
19106,1,"gumdrop, medium (3/4"" dia)",4.2
19106,1,"gumdrop, large (1"" dia)",11.6
19106,1,"jelly ring (1-1/4"" dia)",10.0
19107,1,piece,6.0
19107,1,"piece, small",3.0
19108,10,small,11.0
19108,10,large (1 oz),28
19113,1,tbsp,20
19113,1,cup,315
19116,1,cup of miniature,50
19116,10,miniatures,7.0
19116,1,regular,7.2
19120,1,"bar, miniature",7.0
19120,1,bar (1.55 oz),44
19120,1,cup chips,168
19124,1,tablet,20
19126,1,cup,149
19126,10,pieces,40
19127,1,cup,180
19127,10,pieces,10.0
19128,1,tbsp,15.0
19128,1,cup,240
19129,1,cup,314
19129,1,tbsp,20
19132,1,bar (1.45 oz),41
19132,1,bar (1.55 oz),44
19134,1,bar (1.4 oz),40
19134,1,bar (1.45 oz),45
19134,1,bar (1.65 oz),47
19134,1,"bar, miniature",10.0
19134,1,bar (1.55 oz),44
19138,1,piece,12.0
19147,1,bar (1.4 oz),40
19147,1,bar (1.6 oz),45
19147,1,bar (1.75 fl oz),50
19154,1,piece,1.8
19154,20,pieces,35
19165,1,cup,86
19165,1,tbsp,5.4
19166,1,cup,86
19166,1,tbsp,5.4
19177,1,envelope (1 tbsp),7.0
19177,1,package (1 oz),28
19216,1,piece,39
19270,1,individual (3.5 fl oz),58
19270,.5,cup (4 fl oz),66
19294,1,tbsp,17
19294,1,cup,282
19296,1,cup,339
19296,1,tbsp,21
19296,1,packet (0.5 oz),14.0
19297,1,tbsp,20
19297,1,packet (0.5 oz),14.0
19300,1,packet (0.5 oz),14.0
19303,1,tbsp,20
19303,1,package (0.5 oz),14.0
19303,1,cup,320
19304,1,cup,337
19310,1,package (1.75 oz),50
19312,.125,can,74
19312,1,can (21 oz),595
19314,.125,can,74
19314,1,can (21 oz),595
19334,1,tsp unpacked,3.0
19334,1,cup packed,220
19334,1,cup unpacked,145
19334,1,tsp packed,4.6
19334,1,tsp brownulated,3.2
19335,1,tsp,4.2
19335,1,cup,200
19336,1,cup unsifted,120
19336,1,cup sifted,100
19336,1,tbsp unsifted,8.0
19336,1,tsp,2.5
19340,1,tsp,3.0
19340,1,"piece (1-3/4"" x 1-1/4"" x 1/2"")",28
19348,1,cup,304
19348,2,tbsp,38
19349,1,cup,328
19349,1,tbsp,20
19350,1,cup,341
19350,1,tbsp,22
19351,1,cup,310
19351,1,tbsp,19
19352,1,cup,332
19352,1,tbsp,21
19353,1,tbsp,20
19353,1,cup,315
19355,1,cup,330
19355,1,tbsp,21
19360,1,tbsp,20
19360,1,cup,315
19361,1,cup,315
19361,1,tbsp,20
19362,1,cup,316
19362,1,tbsp,20
19382,1,piece,15.0
19383,1,piece,12.0
19384,1,piece,11.0
19701,1,cup chips (6 oz package),170
19701,1,cup large chips,182
19701,1,cup mini chips,173
19719,1,tbsp,20
19719,1,packet (0.5 oz),14.0
19720,1,cup,315
19720,1,tbsp,20
19858,1,piece,3.5
19859,1,tbsp,5.4
19866,3,pieces,42
19902,1,bar,162
19903,1,bar,112
19904,1,bar,101
19906,1,tbsp,12.9
19906,1,cup,189
19907,1,tbsp,14.5
19907,1,cup,202
19908,1,tsp,4.6
19908,1,cup,202
19909,1,tsp,0.5
19909,1,cup,23
19911,60,milliliter,80
19912,1,tsp,6.9
19912,.25,cup,55
19918,1,package,1.0
20001,1,cup,193
20002,1,cup,246
20003,1,cup,128
20004,1,cup,184
20005,1,cup,200
20006,1,cup,157
20008,1,cup,170
20009,1,cup,164
20010,1,cup,168
20011,1,cup,120
20012,1,cup,140
20013,1,cup,182
20013,1,tbsp,8.4
20014,1,cup,166
20015,1,cup,76
20016,1,cup,117
20017,1,cup,114
20018,1,cup,126
20019,1,cup,114
20020,1,cup,122
20022,1,cup,157
20023,1,cup,122
20024,1,cup,170
20025,1,cup,138
20027,1,cup,128
20028,1,cup,173
20029,1,"cup, cooked",157
20029,1,"cup, dry, yields",528
20030,1,cup,165
20031,1,cup,200
20032,1,cup,174
20033,1,cup,94
20034,1,cup,219
20035,1,cup,170
20036,1,cup,185
20037,1,cup,195
20038,1,cup,156
20040,1,cup,190
20041,1,cup,195
20044,1,cup,185
20045,1,cup,158
20046,1,cup,185
20047,1,cup,158
20048,1,cup,95
20049,1,cup,165
20050,1,cup,195
20051,1,cup,186
20052,1,cup,200
20053,1,cup,186
20054,1,cup,185
20055,1,cup,174
20060,1,cup,118
20061,1,cup,158
20062,1,cup,169
20063,1,cup,128
20064,1,cup,102
20065,1,cup,102
20066,1,cup,167
20067,1,cup,192
20068,1,cup,152
20069,1,cup,192
20070,1,cup,130
20071,1,cup,192
20072,1,cup,192
20073,1,cup,168
20074,1,cup,192
20075,1,cup,168
20076,1,cup,192
20077,1,cup,58
20078,1,cup,115
20080,1,cup,120
20081,1,cup,125
20082,1,cup,125
20083,1,cup,137
20084,1,"cup unsifted, dipped",137
20086,1,cup,111
20087,1,cup,108
20088,1,cup,160
20089,1,cup,164
20090,1,cup,158
20091,1,cup,105
20092,1,cup,140
20099,1,cup elbow shaped,105
20099,1,cup spiral shaped,84
20099,1,cup small shells,93
20100,1,cup elbow shaped,140
20100,1,cup spiral shaped,134
20100,1,cup small shells,115
20105,1,cup spiral shaped,84
20106,1,cup spiral shaped,134
20107,1,cup elbow shaped,105
20108,1,cup elbow shaped,140
20109,1,cup,38
20110,1,cup,160
20111,1,cup,38
20112,1,cup,160
20113,.5,cup dry,28
20115,1,cup,114
20117,1,cup,176
20121,1,cup,140
20125,1,cup,140
20127,1,cup,140
20129,1,"cup unsifted, dipped",137
20130,1,cup,148
20131,1,cup,162
20132,1,cup,104
20134,1,cup,176
20137,1,cup,185
20140,1,cup,174
20141,1,cup,194
20142,1,cup,193
20143,1,cup,252
20310,1,cup,160
20314,1,cup,166
20315,1,tbsp,6.9
20316,1,cup,117
20317,1,cup,114
20320,1,cup,122
20321,1,cup,140
20322,1,cup,157
20323,1,cup,122
20324,1,cup,170
20325,1,cup,138
20330,1,cup,160
20345,1,cup,158
20381,1,cup,125
20400,1,cup elbow shaped,140
20409,1,cup,38
20410,1,cup,160
20421,1,cup,140
20422,1,cup,157
20444,1,cup,185
20445,1,cup,158
20446,1,cup,185
20447,1,cup,158
20450,1,cup,195
20451,1,cup,186
20452,1,cup,200
20453,1,cup,205
20466,1,cup,167
20481,1,cup,125
20499,1,cup elbow shaped,105
20510,1,cup,160
20521,1,cup,140
20522,1,cup,157
20545,1,cup,158
20581,1,cup,125
20647,1,cup,119
20648,1,cup,121
23000,1,steak,369
23000,1,roast,1159
23001,1,steak,534
23005,1,steak,460
23053,1,medallion,41
23055,1,steak,207
23056,1,steak,168
23057,1,steak,241
23059,1,steak,250
23060,1,steak,190
23061,1,steak,197
23062,1,steak,150
23063,1,steak,305
23064,1,steak,236
23068,1,piece,432
23071,1,piece,227
23074,1,piece,331
23077,1,steak,308
23080,1,steak,384
23083,1,roast,787
23086,1,steak,141
23089,1,steak,198
23102,1,steak,679
23102,1,roast,960
23108,1,steak,473
23116,1,steak,449
23119,1,steak,141
23122,1,steak,198
23125,1,piece,289
23128,1,piece,432
23131,1,roast,787
23134,1,piece,227
23137,1,piece,331
23140,1,steak,308
23143,1,steak,384
23150,1,steak,462
23150,1,roast,2627
23153,1,steak,361
23153,1,roast,2155
23162,1,steak,254
23163,1,steak,382
23168,1,steak,174
23169,1,steak,266
23180,1,ribs,1159
23181,1,ribs,1587
23192,1,steak,462
23192,1,roast,2627
23201,1,steak,361
23201,1,roast,2155
23214,1,steak,254
23217,1,steak,382
23221,1,steak,174
23224,1,steak,266
23227,1,steak,251
23230,1,steak,326
23233,1,ribs,1159
23236,1,ribs,1587
23244,1,steak,223
23253,1,fillet,173
23253,1,roast,852
23256,1,fillet,121
23259,1,roast,768
23261,1,fillet,180
23261,1,roast,970
23263,1,fillet,164
23263,1,roast,901
23266,1,steak,209
23269,1,steak,256
23272,1,fillet,135
23275,1,roast,699
23281,1,steak,223
23290,1,fillet,173
23290,1,roast,852
23324,1,steak,344
23327,1,roast,758
23330,1,roast,675
23333,1,steak,140
23336,1,roast,644
23339,1,steak,267
23342,1,steak,170
23345,1,roast,481
23354,1,steak,344
23357,1,roast,758
23360,1,roast,675
23363,1,steak,140
23366,1,roast,644
23369,1,steak,267
23372,1,steak,170
23375,1,roast,481
23386,1,steak,302
23388,1,steak,302
23554,1,steak,287
23558,1,patty (yield from 1/4 lb raw meat),82
23559,1,patty ( yield from 1/4 lb raw meat ),86
23560,1,portion ( yield from 1/2 lb raw meat ),154
23563,1,patty (yield from 1/4 lb raw meat),82
23564,1,patty ( yield from 1/4 lb raw meat ),86
23565,1,portion ( yield from 1/2 lb raw meat ),154
23568,1,patty (yield from 1/4 lb raw meat),77
23569,1,patty ( yield from 1/4 lb raw meat ),83
23570,1,portion ( yield from 1/2 lb raw meat ),149
23573,1,patty (yield from 1/4 lb raw meat),77
23574,1,patty ( yield from 1/4 lb raw meat ),83
23575,1,portion ( yield from 1/2 lb raw meat ),149
23578,1,patty (yield from 1/4 lb raw meat),70
23579,1,patty ( yield from 1/4 lb raw meat ),77
23580,1,portion ( yield from 1/2 lb raw meat ),139
23646,1,roast,261
23651,1,roast,1289
23654,1,steak,383
23656,1,steak,188
28285,1,piece,43
28286,1,piece,79
28287,1,piece,106
28288,1,piece,98
28292,4,crackers,14.0
28295,1,tortilla 1 serving,41
28306,1,piece,68
28307,1,piece,90
31021,1,cup unprepared,159
31022,1,cup prepared,130
42040,1,tbsp,20
42040,1,tsp,6.7
42128,1,cup pieces,138
42130,1,cup pieces,82
42136,1,cup,94
42136,1,packet,3.0
42155,1,"cup, diced",132
42155,1,"cup, shredded",113
42155,1,slice (1 oz),28
42173,1,"cup, cooked",130
42173,1,"patty, cooked",25
42178,1,tbsp,15.0
42178,1,cup,240
42182,1,cup,230
42182,1,fl oz,28.8
42189,1,cup,245
42189,1,fl oz,30.6
42231,1,tbsp,13.6
42231,1,cup,218
42236,.75,cup,30
42258,1,slice 1 oz,28
42262,1,cup pieces,138
42289,1,tbsp,14.0
42289,1,cup,224
42289,1,teaspoon,4.5
42290,1,cup,247
42290,1,fl oz,30.9
42291,1,tbsp,16
42303,1,"cup, shredded",113
42303,1,slice,28
42304,1,"cup, shredded",113
43015,1,tbsp,14.7
43015,1,cup,235
43031,1,piece,14.0
43046,1,piece,14.0
43060,1,piece,2.0
43098,1,cup,264
43112,1,cup,253
43114,1,cup,140
43125,1,cup,240
43128,1,cup,168
43129,1,stick,28
43130,1,"cup, sliced",140
43130,1,frankfurter,70
43131,1,"slice, thin",14.0
43132,1,cup,144
43134,1,fillet,85
43135,1,tbsp,15.0
43136,1,cup,247
43137,1,slice,56
43142,1,cup,150
43143,1,cup,150
43144,1,cup,128
43146,1,cup,136
43212,1,tbsp,7.0
43214,1,cup,80
43216,1,cup,196
43216,1,tsp,4.2
43217,1,cup,245
43261,1,container (6 oz),170
43261,1,container (4.4 oz),125
43261,1,cup (8 fl oz),245
43261,1,container (8 oz),227
43273,1,cup,226
43274,1,tbsp,15.0
43274,1,cup,240
43274,1,"tbsp, whipped",10.0
43276,1,cup,240
43283,1,"cup, chopped or diced",140
43287,1,"cup, chopped or diced",140
43299,1,cup,225
43311,1,cup,180
43312,1,cup,182
43350,1,cup,142
43352,1,cup,226
43365,1,cup,242
43365,1,fl oz,30.2
43378,1,slice cooked,8.0
43379,1,"cup, diced",140
43379,1,"cup, shredded",113
43379,1,slice (3/4 oz),21
43382,1,cup,253
43382,1,fl oz,31.6
43387,1,cup,144
43390,1,"medium slice (approx 3"" x 2"" x 1/4"")",28
43390,1,"thick slice (approx 3"" x 2"" x 3/8"")",42
43391,1,"medium slice (approx 3"" x 2"" x 1/4"")",28
43391,1,"thick slice (approx 3"" x 2"" x 3/8"")",42
43396,1,cup,226
43406,1,tsp,6.0
43410,1,"cup, diced",130
43410,1,cup pieces,168
43410,1,piece,36
43441,1,"medium (2-1/2"" dia)",36
43441,1,"roll (pan, dinner, or small roll) (2"" square, 2"" high)",28
43449,1,cup,253
43476,1,cup,262
43483,1,cup,21
43497,1,cup,58
43584,1,cup,38
43589,1,"cup, diced",132
43589,1,"cup, shredded",108
43589,1,slice (1 oz),28
43598,1,tbsp,15.0
43598,1,cup,239
44005,1,tablespoon,14.0
44005,1,teaspoon,4.5
44110,1,tbsp,19
44110,1,cup,300
44158,1,cup,262
83110,1,"cup, cooked",136
83110,1,"piece (5-1/2"" x 1-1/2"" x 1/2"")",80`;
