package evenwater.firmware;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How Java's names become C's, and which classes of the kernel are translated. */
final class Names {

    /** In the order in which they are explained to a reader of C. */
    private static final Map<String, String> PREFIXES = new LinkedHashMap<>();

    static {
        PREFIXES.put("CyclicRedundancyCheck", "ew_check");
        PREFIXES.put("SavedNumbers", "ew_save");
        PREFIXES.put("ValveSetting", "ew_valve_setting");
        PREFIXES.put("ValveSettings", "ew_valve_settings");
        PREFIXES.put("ValveCount", "ew_valve_count");
        PREFIXES.put("ValveState", "ew_valve_state");
        PREFIXES.put("ValveKernel", "ew_valve");
        PREFIXES.put("ValveEvents", "ew_valve");
        PREFIXES.put("ValveRule", "ew_valve_rule");
        PREFIXES.put("ValveSave", "ew_valve_save");
        PREFIXES.put("UseLearning", "ew_valve_use");
        PREFIXES.put("MeterCounter", "ew_valve_meter");
        PREFIXES.put("PumpSettings", "ew_pump_settings");
        PREFIXES.put("PumpMemory", "ew_pump_memory");
        PREFIXES.put("PumpKernel", "ew_pump");
        PREFIXES.put("PumpServiceKernel", "ew_pump");
        PREFIXES.put("PumpClock", "ew_pump_clock");
        PREFIXES.put("PumpRun", "ew_pump_run");
        PREFIXES.put("PumpSchedule", "ew_pump_schedule");
        PREFIXES.put("PumpWindow", "ew_pump_window");
        PREFIXES.put("SofteningKernel", "ew_softening");
        PREFIXES.put("MembraneKernel", "ew_membrane");
        PREFIXES.put("TemperatureCompensationKernel", "ew_temperature");
    }

    /** Arrays of the pump's functions that are structs in C, by the name of the parameter. */
    private static final Map<String, String> PUMP_ARRAYS = Map.of("s", "PumpSettings", "m", "PumpMemory");

    private Names() {}

    /** Classes of the valve, of the pump, and of what both save with. */
    static List<String> control() {
        return PREFIXES.keySet().stream()
                .filter(name -> !numbers().contains(name))
                .toList();
    }

    /** Classes of which some formulas are taken. */
    static List<String> numbers() {
        return List.of("SofteningKernel", "MembraneKernel", "TemperatureCompensationKernel");
    }

    static String prefix(String owner) {
        String prefix = PREFIXES.get(owner);
        if (prefix == null) {
            throw new IllegalArgumentException("class must be one of " + PREFIXES.keySet() + ", but was " + owner);
        }
        return prefix;
    }

    static String constant(String owner, String name) {
        return prefix(owner).toUpperCase(Locale.ROOT) + "_" + name;
    }

    static String function(String owner, String name) {
        return prefix(owner) + "_" + snake(name);
    }

    /** The struct behind an array of the pump, or an empty text. */
    static String structOfArray(String owner, String parameter) {
        return owner.startsWith("Pump") ? PUMP_ARRAYS.getOrDefault(parameter, "") : "";
    }

    /** The struct behind an array whose field is meant by its class alone. */
    static boolean isArrayStruct(String owner) {
        return PUMP_ARRAYS.containsValue(owner);
    }

    static String variable(String owner, String name) {
        String struct = structOfArray(owner, name);
        return switch (struct) {
            case "PumpSettings" -> "settings";
            case "PumpMemory" -> "memory";
            default -> snake(name);
        };
    }

    static String snake(String camel) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < camel.length(); i++) {
            char c = camel.charAt(i);
            if (Character.isUpperCase(c)) {
                text.append('_');
            }
            text.append(Character.toLowerCase(c));
        }
        return text.toString();
    }
}
