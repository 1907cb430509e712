package evenwater.firmware;

import com.github.javaparser.ast.nodeTypes.NodeWithJavadoc;
import evenwater.chemistry.kernel.AtomicWeights;
import evenwater.chemistry.kernel.ExactUnits;
import evenwater.chemistry.kernel.TemperatureCompensationKernel;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Scales, sodium and compensation as C, in double and in fixed point. */
final class NumberSources {

    /** Tenths of a degree from 0 to 36 °C, the last one for the interpolation at 35.9 °C. */
    static final int NATURAL_WATER_FACTORS = 361;

    private static final Set<String> FORMULAS = Set.of(
            "SofteningKernel.bypassShare", "MembraneKernel.concentrate", "TemperatureCompensationKernel.linearRatio");

    private final Kernel kernel;

    NumberSources(Kernel kernel) {
        this.kernel = kernel;
    }

    String unitsHeader() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("UNITS", each(Scales.all(), NumberSources::unitNumbers));
        texts.put(
                "EXACT_UNITS",
                numbers(
                        ExactUnits.class,
                        field -> "#define EW_" + field.getName() + " " + Constants.number(number(field)) + "\n"));
        texts.put(
                "ATOMIC_WEIGHTS",
                numbers(
                        AtomicWeights.class,
                        field -> "#define EW_ATOMIC_WEIGHT_" + field.getName() + " "
                                + commented(Ratio.of(number(field), 10_000).toDouble()) + "\n"));
        texts.put("FACTOR_COUNT", Integer.toString(NATURAL_WATER_FACTORS));
        return Template.filled("units.h", texts);
    }

    private static <T> String each(List<T> list, Function<T, String> text) {
        return String.join("", list.stream().map(text).toList());
    }

    private static String unitNumbers(Scales scales) {
        String prefix = "EW_" + scales.name().toUpperCase(Locale.ROOT) + "_";
        StringBuilder text = new StringBuilder("/* Units of " + scales.name() + ". */\n");
        for (int i = 0; i < scales.units().size(); i++) {
            text.append("#define ")
                    .append(prefix)
                    .append(scales.units().get(i).constant())
                    .append(' ')
                    .append(i)
                    .append('\n');
        }
        return text.append("/* How many there are. */\n#define ")
                .append(prefix)
                .append("UNITS ")
                .append(scales.units().size())
                .append("\n\n")
                .toString();
    }

    private static String numbers(Class<?> home, Function<Field, String> text) {
        return String.join(
                "",
                Stream.of(home.getFields())
                        .filter(field -> Modifier.isStatic(field.getModifiers()))
                        .map(text)
                        .toList());
    }

    private static long number(Field field) {
        try {
            return field.getLong(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String commented(double value) {
        return Constants.number(value) + " /* " + Constants.readable(value) + " */";
    }

    String unitsSource() {
        return Template.filled(
                "units.c", Map.of("FACTORS", table(NATURAL_WATER_FACTORS, 16, i -> Integer.toString(naturalWater(i)))));
    }

    /** The printed factor for so many tenths of a degree, in thousandths. */
    static int naturalWater(int tenths) {
        return Math.toIntExact(Math.round(1000 * TemperatureCompensationKernel.naturalWaterFactor(tenths / 10.0)));
    }

    private static String table(int count, int perLine, IntFunction<String> cell) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            boolean isFirst = i % perLine == 0;
            boolean isLast = i % perLine == perLine - 1 || i == count - 1;
            text.append(isFirst ? "    " : " ").append(cell.apply(i)).append(isLast ? ",\n" : ",");
        }
        return text.toString();
    }

    String doubleHeader() {
        return Template.filled("double.h", Map.of("CONVERSIONS", each(Scales.all(), NumberSources::declaration)));
    }

    private static String declaration(Scales scales) {
        return Comments.block(
                        List.of(
                                "Converts " + article(scales.name()) + ".",
                                "from, to: one of EW_" + scales.name().toUpperCase(Locale.ROOT)
                                        + "_...\nvalue: finite, in the unit from\nresult: in the unit to"),
                        "")
                + "int32_t ew_" + scales.name() + "(int32_t from, int32_t to, double value, double *result);\n\n";
    }

    private static String article(String name) {
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }

    String doubleSource() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("TABLES", each(Scales.all(), NumberSources::sizes) + temperatures() + sodium());
        texts.put("KERNEL", formulas());
        texts.put("CONVERSIONS", each(Scales.all(), NumberSources::conversion));
        return Wrap.code(Template.filled("double.c", texts));
    }

    private static String sizes(Scales scales) {
        List<Scales.Scale> units = scales.units();
        return "/* Sizes in the first unit. */\nstatic const double ew_" + scales.name() + "_sizes[EW_"
                + scales.name().toUpperCase(Locale.ROOT) + "_UNITS] = {\n"
                + table(
                        units.size(),
                        1,
                        i -> cell(units.get(i).size(), units.get(i).constant()))
                + "};\n\n";
    }

    /** A double with its decimals and what it is of, the comma behind it being the table's. */
    private static String cell(Ratio value, String constant) {
        return "/* " + constant.toLowerCase(Locale.ROOT).replace('_', ' ') + ", " + Constants.readable(value.toDouble())
                + " */ " + Constants.number(value.toDouble());
    }

    private static String temperatures() {
        List<TemperatureScale> all = TemperatureScale.all();
        return "/* kelvin = (value + offset) * size */\n"
                + "static const double ew_temperature_offsets[EW_TEMPERATURE_UNITS] = {\n"
                + table(
                        all.size(),
                        1,
                        i -> cell(
                                Ratio.of(all.get(i).offsetInThousandths(), 1000),
                                all.get(i).constant()))
                + "};\n\nstatic const double ew_temperature_sizes[EW_TEMPERATURE_UNITS] = {\n"
                + table(all.size(), 1, i -> cell(all.get(i).size(), all.get(i).constant()))
                + "};\n\n";
    }

    private static String sodium() {
        List<Scales.Scale> units = Scales.hardness().units();
        return "/* Sodium in mg/L for one unit of hardness. */\n"
                + "static const double ew_sodium_for_hardness[EW_HARDNESS_UNITS] = {\n"
                + table(units.size(), 1, i -> cell(Sodium.exact(i), units.get(i).constant()))
                + "};\n";
    }

    /** The kernel's own formulas, translated. */
    private String formulas() {
        Functions functions = new Functions(kernel, FORMULAS::contains);
        Comments comments = new Comments(kernel, functions);
        StringBuilder text = new StringBuilder();
        for (evenwater.firmware.Function each : functions.all()) {
            text.append(comments.of(each.owner, (NodeWithJavadoc<?>) each.java, ""))
                    .append(each.innerSignature())
                    .append(" {\n")
                    .append(Statements.of(kernel, functions, each))
                    .append("}\n\n");
        }
        return text.toString();
    }

    private static String conversion(Scales scales) {
        return "int32_t ew_" + scales.name()
                + "(int32_t from, int32_t to, double value, double *result) {\n    return ew_convert(ew_"
                + scales.name() + "_sizes, EW_" + scales.name().toUpperCase(Locale.ROOT)
                + "_UNITS, from, to, value, result);\n}\n\n";
    }

    String fixedHeader() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("CONVERSIONS", each(Scales.all(), NumberSources::fixedDeclaration));
        for (FixedFormula formula : FixedFormula.values()) {
            texts.put("BOUND_" + formula.name(), Bounds.text(Ratio.HALF));
        }
        texts.put("BOUND_SODIUM", Bounds.text(Sodium.worstError()));
        return Template.filled("fixed.h", texts);
    }

    private static String fixedDeclaration(Scales scales) {
        String kind = scales.name();
        return Comments.block(
                        List.of(
                                "Converts " + article(kind) + ".",
                                "from, to: one of EW_" + kind.toUpperCase(Locale.ROOT)
                                        + "_...\nvalue: thousandths of the unit from, any; below 0 too"
                                        + "\nresult: thousandths of the unit to"
                                        + "\nWorst error: " + Bounds.text(scales.worstError())),
                        "")
                + "int32_t ew_fixed_" + kind + "(int32_t from, int32_t to, int32_t value, int32_t *result);\n\n";
    }

    String fixedSource() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("TABLES", each(Scales.all(), NumberSources::factors) + fixedTemperatures() + fixedSodium());
        texts.put("CONVERSIONS", each(Scales.all(), NumberSources::fixedConversion));
        return Wrap.code(Template.filled("fixed.c", texts));
    }

    private static String factors(Scales scales) {
        int units = scales.units().size();
        String constant = "EW_" + scales.name().toUpperCase(Locale.ROOT) + "_UNITS";
        return "/* From the unit of the row to that of the column. */\nstatic const ew_fraction ew_fixed_"
                + scales.name()
                + "_factors[" + constant + " * " + constant + "] = {\n"
                + String.join(
                        "",
                        IntStream.range(0, units)
                                .mapToObj(from -> "    /* "
                                        + scales.units()
                                                .get(from)
                                                .constant()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', ' ')
                                        + " */\n" + table(units, 3, to -> fraction(scales.used(from, to))))
                                .toList())
                + "};\n\n";
    }

    private static String fraction(Ratio ratio) {
        return "{" + ratio.num() + ", " + ratio.den() + "}";
    }

    private static String fixedTemperatures() {
        List<TemperatureScale> all = TemperatureScale.all();
        return "/* kelvin = (value + offset) * size; offsets in thousandths */\n"
                + "static const int32_t ew_fixed_temperature_offsets[EW_TEMPERATURE_UNITS] = {\n"
                + table(all.size(), 3, i -> Integer.toString(all.get(i).offsetInThousandths()))
                + "};\n\nstatic const ew_fraction ew_fixed_temperature_sizes[EW_TEMPERATURE_UNITS] = {\n"
                + table(all.size(), 3, i -> fraction(all.get(i).size()))
                + "};\n\n";
    }

    private static String fixedSodium() {
        int units = Scales.hardness().units().size();
        return "/* Sodium in mg/L for one unit of hardness. */\n"
                + "static const ew_fraction ew_fixed_sodium_for_hardness[EW_HARDNESS_UNITS] = {\n"
                + table(units, 3, i -> fraction(Sodium.used(i)))
                + "};\n";
    }

    private static String fixedConversion(Scales scales) {
        String kind = scales.name();
        return "int32_t ew_fixed_" + kind
                + "(int32_t from, int32_t to, int32_t value, int32_t *result) {\n    return ew_fixed_convert(ew_fixed_"
                + kind + "_factors, EW_" + kind.toUpperCase(Locale.ROOT) + "_UNITS, from, to, value, result);\n}\n\n";
    }
}
