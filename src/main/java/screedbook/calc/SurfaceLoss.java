package screedbook.calc;

/**
 * What a surface loses to wind and sky, less what the sun gives: {@code q = h (Ts - Ta) + eps sigma (Ts^4 - Tsky^4) - a
 * G}, W/m2.
 *
 * @param h heat carried off by the air, W/m2K
 * @param air temperature of the air, C
 * @param emissivity from 0 to 1; 0 leaves radiation out
 * @param sky temperature that the sky radiates with, C
 * @param sun heat of the sun that the surface takes up, W/m2
 */
record SurfaceLoss(double h, double air, double emissivity, double sky, double sun) {
    static final double ZERO = 273.15;

    /** Stefan and Boltzmann's constant, W/m2K4 (SI 2019: 5.670374419e-8, from memory). */
    static final double SIGMA = 5.670374419e-8;

    /** W/m2 at a surface temperature in C. */
    double at(double surface) {
        return h * (surface - air) + emissivity * SIGMA * (Math.pow(surface + ZERO, 4) - Math.pow(sky + ZERO, 4)) - sun;
    }

    /** By how much it grows with each degree, W/m2K. */
    double slope(double surface) {
        return h + 4 * emissivity * SIGMA * Math.pow(surface + ZERO, 3);
    }
}
