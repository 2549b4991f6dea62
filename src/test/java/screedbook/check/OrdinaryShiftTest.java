package screedbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A night without anything to see. */
class OrdinaryShiftTest {
    @Test
    void anOrdinaryNightHasNoFinding() {
        Shift night = Shift.night()
                .at(
                        "20:00",
                        "tack product=CSS-1h distributor=D1 surface=milled from_sta=12+00 to_sta=20+00 width_ft=12"
                                + " pull=B lift=2 reading=tank before_gal=500 after_gal=410 material_degF=140 broken=20:20"
                                + " sample=S1 seal_number=4471")
                .at(
                        "20:05",
                        "tack product=CSS-1h distributor=D1 face=longitudinal-joint from_sta=12+00 to_sta=20+00"
                                + " pull=B lift=2 used_gal=6 basis=hand~wand,~gauge material_degF=140")
                .load("21:00", "48201", "loaded=20:20 arrived=20:55 from_sta=12+00 to_sta=13+50 plant_degF=300")
                .load("21:10", "48202", "truck=T118 loaded=20:30 from_sta=13+50 to_sta=15+00")
                .load("21:40", "48203", "loaded=21:11 from_sta=15+00 to_sta=16+50 paver_degF=285")
                .at("22:00", "closing agreed=yes their_loads=3 their_ston=66.93");

        assertThat(night.findings()).isEmpty();
    }
}
