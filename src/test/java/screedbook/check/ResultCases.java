package screedbook.check;

/**
 * The cases of the rule about a laboratory's values. The ends are common practice, no source; a decimal point in the wrong
 * place is what they are for.
 */
final class ResultCases {
    private static final String OF = "result sample=S-1 what=";
    private static final String CORE = "core core=C-1 place_sta=12+50 pull=B lift=2 gmb=2.551 gmm=";

    private ResultCases() {}

    static void add() {
        result("S-1, air voids 0.9 %", OF + "air-voids found=0.9", OF + "air-voids found=1.0");
        result("S-1, air voids 12.1 %", OF + "air-voids found=12.1", OF + "air-voids found=12.0");
        result("S-1, binder content 54 %", OF + "binder-content found=54", OF + "binder-content found=5.4");
        result("S-1, residue 81 %", OF + "residue found=81", OF + "residue found=80");
        result("S-1, density 9.34 %", OF + "density found=9.34", OF + "density found=93.4");
        result("S-1, thickness 51 in", OF + "thickness found=51", OF + "thickness found=51 in_unit=mm");
        result(
                "12.5-70A, Gmm 24.76",
                "result what=gmm found=24.76 mix=12.5-70A",
                "result what=gmm found=2.476 mix=12.5-70A");
        result("core C-1, Gmm 2.81", CORE + "2.81", CORE + "2.8");
    }

    private static void result(String seen, String line, String inside) {
        RuleCases.shifts(
                "result-unusual",
                "",
                Sort.LOOK_AGAIN,
                seen,
                Shift.night().at("22:00", line),
                Shift.night().at("22:00", inside));
    }
}
