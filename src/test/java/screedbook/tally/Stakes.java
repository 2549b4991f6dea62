package screedbook.tally;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import screedbook.entry.Fields;
import screedbook.job.Job;

/** The stakes along a road, foot by foot, and the job that has their equations. */
final class Stakes {
    static final int FEET = 900;

    final List<String> figures = new ArrayList<>();
    final Job job;

    Stakes(Random random) {
        List<Map<String, Object>> equations = new ArrayList<>();
        List<int[]> runs = new ArrayList<>();
        int figure = 1000 + random.nextInt(200);
        int left = FEET;
        for (int i = random.nextInt(3); i > 0; i--) {
            int run = 100 + random.nextInt(200);
            runs.add(new int[] {figure, run});
            int ahead = figure + run + random.nextInt(-60, 120);
            equations.add(Map.of("back_sta", text(figure + run), "ahead_sta", text(ahead)));
            figure = ahead;
            left -= run;
        }
        runs.add(new int[] {figure, left});
        int stretch = 0;
        for (int[] run : runs) {
            for (int i = stretch == 0 ? 0 : 1; i <= run[1]; i++) {
                figures.add(text(run[0] + i) + side(run[0] + i, stretch, runs));
            }
            stretch++;
        }
        this.job = job(random, equations);
    }

    private static String text(int figure) {
        return figure / 100 + "+" + String.format("%02d", figure % 100);
    }

    /** Figures that are there twice say which side they are on; those at an equation itself may be either. */
    private static String side(int figure, int stretch, List<int[]> runs) {
        for (int other = 0; other < runs.size(); other++) {
            int first = other == 0 ? Integer.MIN_VALUE : runs.get(other)[0];
            int last = other == runs.size() - 1 ? Integer.MAX_VALUE : runs.get(other)[0] + runs.get(other)[1];
            if (other != stretch && first <= figure && figure <= last) {
                return other < stretch ? " ah" : " bk";
            }
        }
        return "";
    }

    private static Job job(Random random, List<Map<String, Object>> equations) {
        Map<String, Object> job = new LinkedHashMap<>();
        job.put("id", "test-job");
        job.put("zone", "America/Boise");
        job.put("units", "us");
        job.put("sheet", "practice");
        job.put("stationing", Map.of("direction", random.nextBoolean() ? "up" : "down", "equations", equations));
        List<Map<String, Object>> pulls = new ArrayList<>();
        for (String name : List.of("A", "B")) {
            for (int lift = 1; lift <= 2; lift++) {
                Map<String, Object> pull = new HashMap<>();
                pull.put("name", name);
                pull.put("lift", BigDecimal.valueOf(lift));
                pull.put("left_ft", new BigDecimal(name.equals("A") ? -12 : 0));
                pull.put("right_ft", new BigDecimal(name.equals("A") ? 0 : 12));
                if (random.nextInt(3) > 0) {
                    pull.put("direction", random.nextBoolean() ? "up" : "down");
                }
                pulls.add(pull);
            }
        }
        job.put("pulls", pulls);
        return Fields.build(Job.class, job).value().settled();
    }
}
