-- An invented shop's tables, and what the library calculates from them: sqlite3 < shop.sql, with pourwright loaded.
.headers on

CREATE TABLE molds(mold TEXT, cavities INTEGER, cavity TEXT, sprue TEXT);
INSERT INTO molds VALUES ('finger-5', 4, '9.5 mL', '6 mL'), ('grub-2', 8, '2.1 mL', '5 mL'), ('worm-7', 2, '0.5 fl oz', NULL);

CREATE TABLE bases(base TEXT, density TEXT);
INSERT INTO bases VALUES ('clear-base', '1.03 g/mL');

CREATE TABLE doses(formula TEXT, material TEXT, kind TEXT, amount TEXT, density TEXT, as_scooped TEXT, drop_mass TEXT);
INSERT INTO doses VALUES
    ('dusk',   'plum',       'colorant',   '32 drops', '1.05 g/mL',  NULL,        '0.044 g'),
    ('dusk',   'teal-flake', 'flake',      '1/2 tsp',  '1.38 g/mL',  '0.55 g/mL', NULL),
    ('salted', 'fine-salt',  'salt',       '1/4 cup',  '2.165 g/mL', '1.22 g/mL', NULL),
    ('salted', 'softener',   'softener',   '2 tsp',    '0.98 g/mL',  NULL,        NULL),
    ('salted', 'stabilizer', 'stabilizer', '6 oz',     '0.99 g/mL',  NULL,        NULL);

CREATE TABLE orders(number TEXT, mold TEXT, pieces INTEGER);
INSERT INTO orders VALUES ('31', 'finger-5', 24), ('32', 'grub-2', 100), ('33', 'worm-7', 12);

CREATE TABLE weighed(mold TEXT, grams REAL);
INSERT INTO weighed VALUES ('finger-5', 9.58), ('finger-5', 9.61), ('finger-5', 9.55), ('finger-5', 9.57);

.print Grams of each dose; an amount that can be read in two ways is NULL, and the reason is next to it.
SELECT formula, material, amount,
       round(pour_try('pour_dose_mass', amount, kind, density, as_scooped, drop_mass), 2) AS grams,
       pour_why('pour_dose_mass', amount, kind, density, as_scooped, drop_mass) AS why
FROM doses;

.print Shots and grams for each order.
SELECT number, orders.mold, s.shots, s."cast", round(f.piece_mass_g, 2) AS piece_g, round(f.shot_mass_g, 1) AS shot_g,
       round(s.shots * f.shot_mass_g, 1) AS all_shots_g
FROM orders JOIN molds USING (mold), bases,
     pour_shots(orders.pieces, molds.cavities, 0.03, 0.9) AS s,
     pour_shot_fill AS f
WHERE f.cavities = molds.cavities AND f.cavity_volume_ml = cavity AND f.cold_density_g_per_ml = density
  AND f.sprue_volume_ml = sprue;

.print The cavity of a mold, from weighed pieces.
SELECT mold, round(c.cavity_volume_ml, 2) AS cavity_ml, round(c.cavity_volume_uncertainty_ml, 3) AS "+-", round(c.mean_g, 3) AS mean_g
FROM (SELECT mold, json_group_array(grams) AS list FROM weighed GROUP BY mold), pour_cavity_of_weights(list, '0.01 g', 1.03) AS c;

.print Salt that brings a cup of base to a density.
SELECT value AS density, round(pour_salt_for_density('1 cup', '1.03 g/mL', '2.165 g/mL', value), 1) AS salt_g
FROM json_each('[1.06, 1.09, 1.12]');
