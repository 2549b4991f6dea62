package screedbook.calc;

/**
 * What a layer is made of, as heat sees it.
 *
 * @param k conductivity, W/mK
 * @param rho density, kg/m3
 * @param cp heat taken up, J/kgK
 */
public record Stuff(double k, double rho, double cp) {
    /**
     * Hot mix, and old pavement of it: 0.70 Btu/h ft F, 140 lb/ft3, 0.22 Btu/lb F (Corlew and Dickson 1968, from memory;
     * the same conductivity and heat stand in the parameters of Gui and others 2007 as a public model codes them, read).
     * A measured conductivity is lower by a quarter: 0.896 +- 0.023 (Carlson and others, J. Mater. Civ. Eng. 22(2) 2010,
     * abstract, read).
     */
    public static final Stuff HOT_MIX = new Stuff(1.21, 2243, 921);

    /** Cement concrete: conductivity 1.719 (Carlson and others 2010, abstract, read); the other two from memory. */
    public static final Stuff CONCRETE = new Stuff(1.719, 2300, 880);

    /** Dense aggregate base; all three from memory. */
    public static final Stuff AGGREGATE = new Stuff(2.0, 2100, 900);

    /** Heat that a cubic metre takes up, J/m3K. */
    double store() {
        return rho * cp;
    }

    /** {@code sqrt(k rho cp)}: which of two bodies keeps its temperature better where they touch. */
    double effusivity() {
        return Math.sqrt(k * store());
    }
}
