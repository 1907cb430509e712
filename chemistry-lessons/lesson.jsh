// What a lesson needs, for jshell. How to start it: docs/lessons.md
import evenwater.chemistry.aquarium.*;
import evenwater.chemistry.equilibrium.*;
import evenwater.chemistry.exchange.*;
import evenwater.chemistry.instrument.*;
import evenwater.chemistry.quantity.*;
import evenwater.chemistry.recipe.*;
import evenwater.chemistry.substance.*;
import evenwater.chemistry.treatment.*;
import evenwater.chemistry.uncertainty.*;
import evenwater.chemistry.verdict.*;
import evenwater.chemistry.water.*;
import evenwater.chemistry.worked.*;
import evenwater.lessons.*;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Unit;
import static evenwater.chemistry.quantity.WaterUnits.*;

/** Prints anything with its line ends, where jshell would show them escaped. */
void show(Object what) { System.out.println(what); }

/** An amount of an ion in mg/L. */
AmountConcentration mg(double milligrams, Ion ion) { return AmountConcentration.of(milligrams, ion.milligramPerLitre()); }
