package evenwater.examples.questions;

import evenwater.chemistry.analysis.KitBounds;
import evenwater.chemistry.analysis.KitReadings;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.MassConcentration;

/** What do GH, KH, pH and a "TDS" meter say about sodium? */
public final class WhatAKitLeavesOpen {

    private WhatAKitLeavesOpen() {}

    /**
     * Prints the bounds of a kit.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        KitReadings kit = KitReadings.builder()
                .hardness(DropTest.GENERAL_HARDNESS.turningAt(9)) // the ninth drop turned
                .alkalinity(DropTest.CARBONATE_HARDNESS.turningAt(5))
                .pH(7.2, 7.6)
                .meter(
                        FactorMeter.SCALE_500,
                        ReadingInterval.ofRounded(
                                MassConcentration.parse("260 mg/L"), MassConcentration.parse("10 mg/L")),
                        0.02)
                .build();
        KitBounds bounds = kit.bounds();

        System.out.println(bounds);
        System.out.println(kit.mostInformativeTest(KitQuantity.SODIUM_AND_POTASSIUM));
        // end
    }
}
