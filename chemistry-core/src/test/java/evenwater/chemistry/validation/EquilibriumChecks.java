package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.WaterUnits.ATMOSPHERE;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Csv;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Equilibrium constants, and waters whose equilibrium handbooks state. */
final class EquilibriumChecks {

    private static final Map<String, EquilibriumConstant> PUBLISHED = Map.of(
            "K1_H2CO3", EquilibriumConstant.CARBONIC_ACID_1,
            "K2_HCO3", EquilibriumConstant.CARBONIC_ACID_2,
            "KH_CO2", EquilibriumConstant.CARBON_DIOXIDE_GAS,
            "Ksp_calcite", EquilibriumConstant.CALCITE,
            "Kw", EquilibriumConstant.WATER,
            "Ka2_H2PO4", EquilibriumConstant.PHOSPHORIC_ACID_2,
            "Ka_NH4_BatesPinching", EquilibriumConstant.AMMONIUM_BATES_PINCHING);

    private static final Map<String, Source> SOURCES = Map.of(
            "K1_H2CO3", Source.HARNED_DAVIS,
            "K2_HCO3", Source.HARNED_SCHOLES,
            "KH_CO2", Source.STUMM_MORGAN,
            "Ksp_calcite", Source.STUMM_MORGAN,
            "Kw", Source.ROBINSON_STOKES,
            "Ka2_H2PO4", Source.BATES_ACREE,
            "Ka_NH4_BatesPinching", Source.BATES_PINCHING);

    private EquilibriumChecks() {}

    static Topic constants() {
        List<PublishedCheck> checks = new ArrayList<>();
        for (Map<String, String> row : Csv.rows("equilibrium-constants.csv")) {
            if (!row.get("kind").equals("published")) {
                continue;
            }
            String id = row.get("id");
            for (String celsius : List.of("0", "10", "25", "30", "50")) {
                String published = row.get("logK_" + celsius + "C");
                if (published.isEmpty()) {
                    continue;
                }
                double lg = PUBLISHED.get(id).ln(Double.parseDouble(celsius) + 273.15) / Math.log(10);
                boolean hotWater = id.equals("Kw") && Double.parseDouble(celsius) >= 30;
                PublishedCheck check = new Result(id + "-" + celsius, "lg " + id + " at " + celsius + " °C", "1", lg)
                        .against(
                                Figure.within(published, hotWater ? "0.02" : "0.01"),
                                SOURCES.get(id),
                                Status.FROM_MEMORY);
                checks.add(hotWater ? check.remarking("the function follows Marshall and Franck 1981") : check);
            }
        }
        return new Topic(
                "Equilibrium constants",
                "Functions of temperature against printed tables; 0.01 is the spread between good tables, 0.02 for water above 30 °C.",
                checks);
    }

    /** The figure leaves out activities and pairs: {@code x² / (c − x) = Kw / K2} for OH⁻, by K2 10^-10.329 and Kw 10^-14. */
    private static PublishedCheck soda() {
        Water water = Water.pure()
                .plus(Change.of(Map.of(
                        Ion.SODIUM, AmountConcentration.of(2, MILLIMOLE_PER_LITRE),
                        Ion.CARBONATE, AmountConcentration.of(1, MILLIMOLE_PER_LITRE))));
        double base = Math.exp((10.329 - 14) * Math.log(10));
        double hydroxide = (Math.sqrt(base * base + 4e-3 * base) - base) / 2;
        return new Result("soda", "pH of 1 mmol/L of Na₂CO₃, closed, 25 °C", "1", pH(water))
                .against(Figure.within("10.56", "0.01"), Source.ARITHMETIC, Status.COMPUTED)
                .differing(
                        "the figure is that of an ideal solution; activities take 0.043 off, pairs with Na⁺ 0.005",
                        BigDecimal.valueOf(14 + Math.log10(hydroxide)));
    }

    static Topic waters() {
        List<PublishedCheck> checks = new ArrayList<>();
        Water rain = GasExchange.equilibrated(Water.pure(), WaterUnits.pressure(0.000316227766, ATMOSPHERE));
        checks.add(new Result("pure-water-in-air", "pH of pure water under 10^-3.5 atm of CO₂", "1", pH(rain))
                .against(Figure.within("5.65", "0.02"), Source.STUMM_MORGAN, Status.FROM_MEMORY));
        Water calcite = MineralEquilibrium.saturated(
                Water.pure(), Mineral.CALCITE, WaterUnits.pressure(0.000316227766, ATMOSPHERE));
        checks.add(new Result("calcite-in-air-ph", "pH of calcite, air of 10^-3.5 atm CO₂ and water", "1", pH(calcite))
                .against(Figure.within("8.3", "0.05"), Source.STUMM_MORGAN, Status.FROM_MEMORY));
        checks.add(new Result(
                        "calcite-in-air-ca",
                        "calcium of calcite, air of 10^-3.5 atm CO₂ and water",
                        "mmol/L",
                        calcite.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE))
                .against(Figure.within("0.5", "0.075"), Source.STUMM_MORGAN, Status.FROM_MEMORY));
        checks.add(soda());
        String[] buffer = "0 10.317 20 10.062 25 10.012 30 9.966 50 9.828".split(" ", -1);
        for (int i = 0; i < buffer.length; i += 2) {
            double celsius = Double.parseDouble(buffer[i]);
            checks.add(
                    new Result(
                                    "carbonate-buffer-" + buffer[i],
                                    "pH of NaHCO₃ and Na₂CO₃, 0.025 mol/kg each, at " + buffer[i] + " °C",
                                    "1",
                                    bufferWithoutPairs(celsius))
                            .against(Figure.within(buffer[i + 1], "0.02"), Source.STAPLES_BATES, Status.VERIFIED)
                            .remarking(
                                    "sodium as an ion without pairs; with NaCO₃⁻ of lg K 1.27, a doubtful figure, 0.14 lower at 25 °C"));
        }
        return new Topic("Waters in equilibrium", "pH and calcium where CO₂, calcite or a buffer set them.", checks);
    }

    private static double bufferWithoutPairs(double celsius) {
        SpeciationState state = new SpeciationState();
        state.temperature(celsius + 273.15);
        state.inert(0.075);
        int status =
                SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON, 0.075, 0.050);
        return status == SpeciationKernel.CONVERGED ? -state.lnAcid() / Math.log(10) : Double.NaN;
    }

    private static double pH(Water water) {
        return Speciation.of(water).pH();
    }
}
