# A demo shift added up from its plain lines, without the program: jq -rs -f totals.jq SHIFT.*.jsonl
# Gives the figures' permanent words with their values; what the program says has to be the same.

def id: "\(.book)/\(.n)";
# Keys carry their unit; without it a job in US units and one in metric units read alike.
def plain: with_entries(.key |= (sub("_(ston|t)$"; "_w") | sub("_deg[FC]$"; "_deg") | sub("_(gal|L)$"; "_vol")
    | sub("_(ft|m)$"; "_len")));
def exact: . * 1000000 | round / 1000000;
def total(f): map(f) | add // 0 | exact;
def seconds: .[0:19] + "Z" | fromdateiso8601;

map(plain | if .set then .set |= plain else . end) as $lines
| (if any(.[]; has("net_t")) then
     {station: 1000, area: 1, weight: 1000, shrinks: 0.00045, base: 15}
   else
     {station: 100, area: 9, weight: 2000, shrinks: 0.00025, base: 60}
   end) as $units
| def along: split("+") | (.[0] | tonumber) * $units.station + (.[1] | tonumber);
  [$lines[] | select(.kind == "strike") | .of] as $struck
| [$lines[] | select(.kind == "amend")] as $amends
# Every entry as it stands: struck ones are left out, amended ones have the newer values.
| [ $lines[]
    | id as $id
    | select(any($struck[]; . == $id) | not)
    | reduce ($amends[] | select(.of == $id) | .set) as $set (.; . + $set) ] as $standing
| [$standing[] | select(.kind == "waste")] as $wastes
| [$standing[] | select(.kind == "part")] as $parts
| [ $standing[] | select(.kind == "ticket") | . + {id: id}
    | .placed = (if (.fate // "placed") == "placed" then .net_w
                 elif .fate == "part-placed" then .net_w - .returned_w
                 else 0 end)
    | .id as $id
    | .pay = .placed - ([$wastes[] | select(.of == $id) | .weight_w] | add // 0)
    | .own = .pay - ([$parts[] | select(.of == $id) | .share_w] | add // 0) ] as $tickets
| [$standing[] | select(.kind == "tack" and .surface != null and .before_vol != null)
    | .sprayed = .before_vol - .after_vol
    | .at60 = .sprayed * (((1 - $units.shrinks * (.material_deg - $units.base)) * 10000 | round) / 10000)
    | .area = ((.to_sta | along) - (.from_sta | along)) * .width_len / $units.area ] as $shots
| ( $tickets | group_by(.mix)[] | .[0].mix as $mix
    | ["loads.mix.\($mix)", length],
      ["received-tons.mix.\($mix)", total(.net_w)],
      ["placed-tons.mix.\($mix)", total(.placed)],
      ["pay-tons.mix.\($mix)",
        (total(.pay) - ($wastes | map(select(.of == null and .mix == $mix)) | total(.weight_w)) | exact)],
      ( map(select(.placed > 0 and .paver_deg != null) | .paver_deg)
        | ["paver-temperature-readings.\($mix)", length],
          ["paver-temperature-least.\($mix)", min],
          ["paver-temperature-most.\($mix)", max] ) ),
  ( $tickets | map(select(.placed > 0)) | group_by([.pull, .lift])[] | "\(.[0].pull) lift \(.[0].lift)" as $pull
    | ((map(.to_sta | along) | max) - (map(.from_sta | along) | min)) as $length
    | .[0].job as $job
    | {
        "harrow-bend": {"A lift 1": 12.5, "B lift 1": 11.5, "A lift 2": 12},
        "tanager-flats": {"A lift 1": 12}, "brackwater-quay": {"L lift 1": 3.5}
      }[$job][$pull] as $width
    # Tapers beside the pull; one in place of its width is in none of these shifts.
    | ([$standing[] | select(.kind == "area" and .counts == "beside" and "\(.pull) lift \(.lift)" == $pull)
        | ((.to_sta | along) - (.from_sta | along)) * (.width_from_len + .width_to_len) / 2] | add // 0) as $beside
    | (($length * $width + $beside) / $units.area) as $area
    | ["length.\($pull)", $length],
      ["area.\($pull)", ($area | exact)],
      ["spread-rate.\($pull)", (total(.own) * $units.weight / $area | exact)] ),
  ( $shots | group_by([.product, .surface])[] | "\(.[0].product) on \(.[0].surface)" as $on
    | ["tack-volume.\($on)", total(.sprayed)],
      ["tack-volume-at-base.\($on)", total(.at60)],
      ["tack-area.\($on)", total(.area)],
      ["tack-applied.\($on)", (total(.at60) / total(.area) | exact)] ),
  ( $tickets
    | map(select(.plant_deg != null and .paver_deg != null and .loaded != null and .discharged != null)
        | select((.fate // "placed") != "void-at-plant" and .fate != "other-job")
        | {plant, x: (((.discharged | seconds) - (.loaded | seconds)) / 60), y: (.plant_deg - .paver_deg)}
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
