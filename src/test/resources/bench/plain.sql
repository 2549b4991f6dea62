SELECT job, substr(shift, 1, 10), mix, count(*), CAST(sum(net_ston) * 100 AS BIGINT), CAST(min(paver_degF) AS INTEGER),
  CAST(max(paver_degF) AS INTEGER)
FROM read_json('{files}', format = 'newline_delimited', hive_partitioning = false,
  columns = {kind: 'VARCHAR', job: 'VARCHAR', shift: 'VARCHAR', mix: 'VARCHAR', net_ston: 'DECIMAL(12, 2)',
    paver_degF: 'DECIMAL(9, 2)'})
WHERE kind = 'ticket' GROUP BY ALL ORDER BY ALL;
