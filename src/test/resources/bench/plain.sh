# Loads, hundredths of tons, least and greatest temperature at the paver by job, day and mix; no corrections.
# shellcheck disable=SC2086
cat $1 | jq -r 'select(.kind == "ticket") | [.job, .shift[0:10], .mix, ((.net_ston // 0) * 100 | round), .paver_degF] | @csv' |
    tr -d '"' | awk -F, '{ k = $1 "," $2 "," $3; n[k]++; t[k] += $4
        if ($5 != "") { if (!(k in lo) || $5 < lo[k]) lo[k] = $5; if (!(k in hi) || $5 > hi[k]) hi[k] = $5 } }
        END { for (k in n) print k "," n[k] "," t[k] "," lo[k] "," hi[k] }' | LC_ALL=C sort
