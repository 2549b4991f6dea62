-- Loads, tons and mix temperatures by job, day and mix, with strikes and amendments applied: the same figures as
-- "screedbook season --loads". For DuckDB (tried with 1.4.1).
-- Every type is named: a reader that guesses takes a time with an offset for one of UTC and moves the loads of a night
-- to the next day, and sums tons in binary. A shift is text; its day is the date on which it began.
-- A line that is no JSON stops the query; "screedbook verify" names it. Chains and seals are not looked at here.
WITH line AS (
  SELECT * FROM read_json('{files}', format = 'newline_delimited', hive_partitioning = false, columns = {
    "n": 'INTEGER',
    "kind": 'VARCHAR',
    "job": 'VARCHAR',
    "shift": 'VARCHAR',
    "book": 'VARCHAR',
    "time": 'VARCHAR',
    "keyed": 'VARCHAR',
    "plant": 'VARCHAR',
    "number": 'VARCHAR',
    "truck": 'VARCHAR',
    "mix": 'VARCHAR',
    "fate": 'VARCHAR',
    "reissue_of": 'VARCHAR',
    "net_ston": 'DECIMAL(12, 3)',
    "net_t": 'DECIMAL(12, 3)',
    "returned_ston": 'DECIMAL(12, 3)',
    "returned_t": 'DECIMAL(12, 3)',
    "paver_degF": 'DECIMAL(9, 2)',
    "paver_degC": 'DECIMAL(9, 2)',
    "plant_degF": 'DECIMAL(9, 2)',
    "plant_degC": 'DECIMAL(9, 2)',
    "of": 'VARCHAR',
    "set": 'JSON'})
  WHERE kind IN ('ticket', 'strike', 'amend')
),
strikes AS (
  SELECT job, shift, concat(book, '/', CAST(n AS VARCHAR)) AS ref, "of" AS target FROM line WHERE kind = 'strike'
),
-- A strike that is struck has no force; strikes of strikes are followed three deep.
once AS (
  SELECT s.* FROM strikes s WHERE NOT EXISTS (
    SELECT 1 FROM strikes t WHERE t.job = s.job AND t.shift = s.shift AND t.target = s.ref AND t.ref <> s.ref)
),
twice AS (
  SELECT s.* FROM strikes s WHERE NOT EXISTS (
    SELECT 1 FROM once t WHERE t.job = s.job AND t.shift = s.shift AND t.target = s.ref AND t.ref <> s.ref)
),
struck AS (
  SELECT DISTINCT s.job, s.shift, s.target FROM strikes s WHERE s.target <> s.ref AND NOT EXISTS (
    SELECT 1 FROM twice t WHERE t.job = s.job AND t.shift = s.shift AND t.target = s.ref AND t.ref <> s.ref)
),
amends AS (
  SELECT l.job, l.shift, l.book, l.n, concat(l.book, '/', CAST(l.n AS VARCHAR)) AS ref, l."of" AS target,
    CAST(l.keyed AS TIMESTAMPTZ) AS at, l."set" AS changes
  FROM line l
  LEFT JOIN struck s ON s.job = l.job AND s.shift = l.shift AND s.target = concat(l.book, '/', CAST(l.n AS VARCHAR))
  WHERE l.kind = 'amend' AND s.target IS NULL
),
-- An amendment of an amendment speaks of the entry that the first one amends, in the first one's place.
spoken AS (
  SELECT a.job, a.shift, coalesce(b.target, a.target) AS target, a.changes,
    coalesce(b.at, a.at) AS at1, coalesce(b.book, a.book) AS book1, coalesce(b.n, a.n) AS n1,
    a.at AS at2, a.book AS book2, a.n AS n2
  FROM amends a LEFT JOIN amends b ON b.job = a.job AND b.shift = a.shift AND b.ref = a.target
),
spread AS (
  SELECT *, unnest(json_keys(changes)) AS name FROM spoken
),
changes AS (
  SELECT *, json_extract_string(changes, concat('$."', name, '"')) AS value FROM spread
),
-- Of several amendments of a blank the last one counts.
last AS (
  SELECT job, shift, target, name, value, row_number() OVER (
      PARTITION BY job, shift, target, name ORDER BY at1 DESC, book1 DESC, n1 DESC, at2 DESC, book2 DESC, n2 DESC) AS age
  FROM changes
),
patch AS (
  SELECT job, shift, target,
    max(CASE WHEN name = 'plant' THEN value END) AS plant_value, max(CASE WHEN name = 'plant' THEN 1 ELSE 0 END) = 1 AS plant_set,
    max(CASE WHEN name = 'number' THEN value END) AS number_value, max(CASE WHEN name = 'number' THEN 1 ELSE 0 END) = 1 AS number_set,
    max(CASE WHEN name = 'truck' THEN value END) AS truck_value, max(CASE WHEN name = 'truck' THEN 1 ELSE 0 END) = 1 AS truck_set,
    max(CASE WHEN name = 'mix' THEN value END) AS mix_value, max(CASE WHEN name = 'mix' THEN 1 ELSE 0 END) = 1 AS mix_set,
    max(CASE WHEN name = 'fate' THEN value END) AS fate_value, max(CASE WHEN name = 'fate' THEN 1 ELSE 0 END) = 1 AS fate_set,
    max(CASE WHEN name = 'reissue_of' THEN value END) AS reissue_of_value, max(CASE WHEN name = 'reissue_of' THEN 1 ELSE 0 END) = 1 AS reissue_of_set,
    max(CASE WHEN name = 'time' THEN value END) AS time_value, max(CASE WHEN name = 'time' THEN 1 ELSE 0 END) = 1 AS time_set,
    max(CASE WHEN name = 'net_ston' THEN value END) AS net_ston_value, max(CASE WHEN name = 'net_ston' THEN 1 ELSE 0 END) = 1 AS net_ston_set,
    max(CASE WHEN name = 'net_t' THEN value END) AS net_t_value, max(CASE WHEN name = 'net_t' THEN 1 ELSE 0 END) = 1 AS net_t_set,
    max(CASE WHEN name = 'returned_ston' THEN value END) AS returned_ston_value, max(CASE WHEN name = 'returned_ston' THEN 1 ELSE 0 END) = 1 AS returned_ston_set,
    max(CASE WHEN name = 'returned_t' THEN value END) AS returned_t_value, max(CASE WHEN name = 'returned_t' THEN 1 ELSE 0 END) = 1 AS returned_t_set,
    max(CASE WHEN name = 'paver_degF' THEN value END) AS paver_degF_value, max(CASE WHEN name = 'paver_degF' THEN 1 ELSE 0 END) = 1 AS paver_degF_set,
    max(CASE WHEN name = 'paver_degC' THEN value END) AS paver_degC_value, max(CASE WHEN name = 'paver_degC' THEN 1 ELSE 0 END) = 1 AS paver_degC_set,
    max(CASE WHEN name = 'plant_degF' THEN value END) AS plant_degF_value, max(CASE WHEN name = 'plant_degF' THEN 1 ELSE 0 END) = 1 AS plant_degF_set,
    max(CASE WHEN name = 'plant_degC' THEN value END) AS plant_degC_value, max(CASE WHEN name = 'plant_degC' THEN 1 ELSE 0 END) = 1 AS plant_degC_set
  FROM last WHERE age = 1 GROUP BY job, shift, target
),
tickets AS (
  SELECT l.job, l.shift, l.book, l.n, l.keyed,
    CASE WHEN p.plant_set THEN p.plant_value ELSE l."plant" END AS "plant",
    CASE WHEN p.number_set THEN p.number_value ELSE l."number" END AS "number",
    CASE WHEN p.truck_set THEN p.truck_value ELSE l."truck" END AS "truck",
    CASE WHEN p.mix_set THEN p.mix_value ELSE l."mix" END AS "mix",
    CASE WHEN p.fate_set THEN p.fate_value ELSE l."fate" END AS "fate",
    CASE WHEN p.reissue_of_set THEN p.reissue_of_value ELSE l."reissue_of" END AS "reissue_of",
    CASE WHEN p.time_set THEN p.time_value ELSE l."time" END AS "time",
    CASE WHEN p.net_ston_set THEN CAST(p.net_ston_value AS DECIMAL(12, 3)) ELSE l."net_ston" END AS "net_ston",
    CASE WHEN p.net_t_set THEN CAST(p.net_t_value AS DECIMAL(12, 3)) ELSE l."net_t" END AS "net_t",
    CASE WHEN p.returned_ston_set THEN CAST(p.returned_ston_value AS DECIMAL(12, 3)) ELSE l."returned_ston" END AS "returned_ston",
    CASE WHEN p.returned_t_set THEN CAST(p.returned_t_value AS DECIMAL(12, 3)) ELSE l."returned_t" END AS "returned_t",
    CASE WHEN p.paver_degF_set THEN CAST(p.paver_degF_value AS DECIMAL(9, 2)) ELSE l."paver_degF" END AS "paver_degF",
    CASE WHEN p.paver_degC_set THEN CAST(p.paver_degC_value AS DECIMAL(9, 2)) ELSE l."paver_degC" END AS "paver_degC",
    CASE WHEN p.plant_degF_set THEN CAST(p.plant_degF_value AS DECIMAL(9, 2)) ELSE l."plant_degF" END AS "plant_degF",
    CASE WHEN p.plant_degC_set THEN CAST(p.plant_degC_value AS DECIMAL(9, 2)) ELSE l."plant_degC" END AS "plant_degC"
  FROM line l
  LEFT JOIN struck s ON s.job = l.job AND s.shift = l.shift AND s.target = concat(l.book, '/', CAST(l.n AS VARCHAR))
  LEFT JOIN patch p ON p.job = l.job AND p.shift = l.shift AND p.target = concat(l.book, '/', CAST(l.n AS VARCHAR))
  WHERE l.kind = 'ticket' AND s.target IS NULL
),
again AS (
  SELECT DISTINCT job, shift, coalesce(plant, '') AS plant, reissue_of FROM tickets
  WHERE reissue_of IS NOT NULL AND (number IS NULL OR reissue_of <> number)
),
-- The same paper keyed twice counts once; a ticket that was issued again does not count.
loads AS (
  SELECT t.*, a.reissue_of IS NOT NULL AS old,
    coalesce(t.net_ston, t.net_t) AS net, coalesce(t.returned_ston, t.returned_t) AS returned,
    coalesce(t.paver_degF, t.paver_degC) AS paver, coalesce(t.plant_degF, t.plant_degC) AS plant_heat,
    a.reissue_of IS NULL AND t.number IS NOT NULL AND t.number NOT LIKE '%?%'
      AND coalesce(t.net_ston, t.net_t) IS NOT NULL AS whole,
    -- A shift is in the units that its job had then, one without any figure in those of its other shifts.
    coalesce(
      max(CASE WHEN coalesce(t.net_t, t.paver_degC, t.plant_degC) IS NOT NULL THEN 1
        WHEN coalesce(t.net_ston, t.paver_degF, t.plant_degF) IS NOT NULL THEN 0 END) OVER (PARTITION BY t.job, t.shift),
      max(CASE WHEN coalesce(t.net_t, t.paver_degC, t.plant_degC) IS NOT NULL THEN 1 ELSE 0 END)
        OVER (PARTITION BY t.job)) = 1 AS metric
  FROM tickets t LEFT JOIN again a
    ON a.job = t.job AND a.shift = t.shift AND a.plant = coalesce(t.plant, '') AND a.reissue_of = t.number
),
counted AS (
  SELECT l.*, old OR whole AND row_number() OVER (
      PARTITION BY job, shift, whole, plant, number, truck, net
      ORDER BY CAST(coalesce("time", keyed) AS TIMESTAMPTZ), book, n) > 1 AS twin,
    coalesce(fate, CASE WHEN returned IS NULL THEN 'placed' ELSE 'part-placed' END) AS became
  FROM loads l
),
figures AS (
  SELECT job, substr(shift, 1, 10) AS day, coalesce(mix, 'mix not noted') AS mix,
    CASE WHEN metric THEN 'metric' ELSE 'us' END AS units,
    CASE WHEN twin OR became IN ('void-at-plant', 'other-job') THEN 0 ELSE 1 END AS came,
    CASE WHEN twin OR became IN ('void-at-plant', 'other-job') THEN 0 ELSE coalesce(net, 0) END AS received,
    CASE WHEN twin THEN 0
      WHEN became = 'placed' THEN coalesce(net, 0)
      WHEN became = 'part-placed' AND returned IS NOT NULL THEN coalesce(net, 0) - returned
      ELSE 0 END AS placed,
    CASE WHEN NOT twin AND became IN ('placed', 'part-placed') THEN paver END AS paver,
    CASE WHEN NOT twin AND became IN ('placed', 'part-placed') THEN plant_heat END AS plant
  FROM counted
)
SELECT job, CAST(day AS DATE) AS day, mix, units, sum(came) AS loads,
  CAST(sum(received) AS DECIMAL(18, 3)) AS received, CAST(sum(placed) AS DECIMAL(18, 3)) AS placed,
  count(paver) AS paver_readings, min(paver) AS paver_least,
  CASE WHEN count(paver) > 0 THEN CAST(CAST((2 * CAST(sum(paver) * 100 AS BIGINT) + count(paver)) // (2 * count(paver)) AS DECIMAL(18, 2)) / 100 AS DECIMAL(9, 2)) END
    AS paver_mean, max(paver) AS paver_most,
  count(plant) AS plant_readings, min(plant) AS plant_least,
  CASE WHEN count(plant) > 0 THEN CAST(CAST((2 * CAST(sum(plant) * 100 AS BIGINT) + count(plant)) // (2 * count(plant)) AS DECIMAL(18, 2)) / 100 AS DECIMAL(9, 2)) END
    AS plant_mean, max(plant) AS plant_most
FROM figures GROUP BY job, day, mix, units ORDER BY job, day, mix;
