# A demo shift added up from its plain lines, without the program: jq -rs -f totals.jq SHIFT.*.jsonl
# Gives the figures' permanent words with their values; what the program says has to be the same.

def id: "\(.book)/\(.n)";
def feet: split("+") | (.[0] | tonumber) * 100 + (.[1] | tonumber);
def exact: . * 1000000 | round / 1000000;
def total(f): map(f) | add // 0 | exact;
def seconds: .[0:19] + "Z" | fromdateiso8601;

. as $lines
| [$lines[] | select(.kind == "strike") | .of] as $struck
| [$lines[] | select(.kind == "amend")] as $amends
# Every entry as it stands: struck ones are left out, amended ones have the newer values.
| [ $lines[]
    | id as $id
    | select(any($struck[]; . == $id) | not)
    | reduce ($amends[] | select(.of == $id) | .set) as $set (.; . + $set) ] as $standing
| [$standing[] | select(.kind == "waste")] as $wastes
| [$standing[] | select(.kind == "part")] as $parts
| [ $standing[] | select(.kind == "ticket") | . + {id: id}
    | .placed = (if (.fate // "placed") == "placed" then .net_ston
                 elif .fate == "part-placed" then .net_ston - .returned_ston
                 else 0 end)
    | .id as $id
    | .pay = .placed - ([$wastes[] | select(.of == $id) | .weight_ston] | add // 0)
    | .own = .pay - ([$parts[] | select(.of == $id) | .share_ston] | add // 0) ] as $tickets
| [$standing[] | select(.kind == "tack" and .surface != null and .before_gal != null)
    | .sprayed = .before_gal - .after_gal
    | .at60 = .sprayed * (((1 - 0.00025 * (.material_degF - 60)) * 10000 | round) / 10000)
    | .area = ((.to_sta | feet) - (.from_sta | feet)) * .width_ft / 9 ] as $shots
| ( $tickets | group_by(.mix)[] | .[0].mix as $mix
    | ["loads.mix.\($mix)", length],
      ["received-tons.mix.\($mix)", total(.net_ston)],
      ["placed-tons.mix.\($mix)", total(.placed)],
      ["pay-tons.mix.\($mix)",
        (total(.pay) - ($wastes | map(select(.of == null and .mix == $mix)) | total(.weight_ston)) | exact)],
      ( map(select(.placed > 0 and .paver_degF != null) | .paver_degF)
        | ["paver-temperature-readings.\($mix)", length],
          ["paver-temperature-least.\($mix)", min],
          ["paver-temperature-most.\($mix)", max] ) ),
  ( $tickets | map(select(.placed > 0)) | group_by([.pull, .lift])[] | "\(.[0].pull) lift \(.[0].lift)" as $pull
    | ((map(.to_sta | feet) | max) - (map(.from_sta | feet) | min)) as $length
    | {"A lift 1": 12.5, "B lift 1": 11.5, "A lift 2": 12}[$pull] as $width
    | ["length.\($pull)", $length],
      ["area.\($pull)", ($length * $width / 9 | exact)],
      ["spread-rate.\($pull)", (total(.own) * 2000 / ($length * $width / 9) | exact)] ),
  ( $shots | group_by([.product, .surface])[] | "\(.[0].product) on \(.[0].surface)" as $on
    | ["tack-volume.\($on)", total(.sprayed)],
      ["tack-volume-at-base.\($on)", total(.at60)],
      ["tack-area.\($on)", total(.area)],
      ["tack-applied.\($on)", (total(.at60) / total(.area) | exact)] ),
  ( $tickets
    | map(select(.plant_degF != null and .paver_degF != null and .loaded != null and .discharged != null)
        | select((.fate // "placed") != "void-at-plant" and .fate != "other-job")
        | {plant, x: (((.discharged | seconds) - (.loaded | seconds)) / 60), y: (.plant_degF - .paver_degF)}
        | select(.x >= 0))
    | group_by(.plant)[] | select(length > 2) | .[0].plant as $plant | length as $n
    | (map(.x) | add) as $x | (map(.y) | add) as $y
    | (map(.x * .x) | add) as $xx | (map(.x * .y) | add) as $xy
    | ["haul-loads.\($plant)", $n],
      ["haul-minutes.\($plant)", ($x / $n | exact)],
      ["haul-loss.\($plant)", ($y / $n | exact)],
      (($n * $xx - $x * $x) as $wide | select($wide > 0)
        | ["haul-loss-rate.\($plant)", (($n * $xy - $x * $y) / $wide | exact)]) )
| @tsv
