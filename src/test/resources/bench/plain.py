"""Loads, hundredths of tons, least and greatest temperature at the paver by job, day and mix; no corrections."""
import glob, json, sys

sums = {}
for name in glob.glob(sys.argv[1]):
    with open(name, encoding="utf-8") as lines:
        for line in lines:
            e = json.loads(line)
            if e["kind"] == "ticket":
                key = (e["job"], e["shift"][:10], e["mix"])
                s = sums.setdefault(key, [0, 0, None, None])
                s[0] += 1
                s[1] += round(e.get("net_ston", 0) * 100)
                t = e.get("paver_degF")
                if t is not None:
                    s[2] = t if s[2] is None else min(s[2], t)
                    s[3] = t if s[3] is None else max(s[3], t)
for key in sorted(sums):
    print(",".join("" if v is None else str(v) for v in [*key, *sums[key]]))
