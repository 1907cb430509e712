package evenwater.page;

import evenwater.chemistry.verdict.Caution;
import java.util.List;

/** The HTML of a part: its form, the place of its answer, its cautions. */
final class PartHtml {

    private final Part part;
    private final StringBuilder out;

    private PartHtml(Part part, StringBuilder out) {
        this.part = part;
        this.out = out;
    }

    static void write(Part part, StringBuilder out) {
        new PartHtml(part, out).write();
    }

    private void write() {
        String title = part.id() + "-title";
        line("<section class=\"part\" id=\"" + part.id() + "\" aria-labelledby=\"" + title + "\">");
        line("<h2 id=\"" + title + "\">" + Html.escaped(part.title()) + "</h2>");
        line("<p class=\"lead\">" + Html.escaped(part.lead()) + "</p>");
        line("<div class=\"sheet\">");
        line("<form novalidate autocomplete=\"off\" data-part=\"" + part.id() + "\" aria-labelledby=\"" + title
                + "\">");
        part.groups().forEach(this::group);
        line("<button type=\"submit\">Work it out</button>");
        line("</form>");
        line("<div class=\"answer\" data-answer=\"" + part.id() + "\">");
        line("<p class=\"summary\" role=\"status\" aria-live=\"polite\"></p>");
        line("<div class=\"figures\"></div>");
        line("<div class=\"steps\"></div>");
        line("<ul class=\"notes\" hidden></ul>");
        line("</div>");
        line("</div>");
        cautions();
        line("</section>");
    }

    private void group(ControlGroup group) {
        line("<fieldset>");
        line("<legend>" + Html.escaped(group.legend()) + "</legend>");
        group.controls().forEach(this::control);
        line("</fieldset>");
    }

    private void control(Control control) {
        Control.When when = control.when();
        String condition = when.id().isEmpty()
                ? ""
                : " data-when=\"" + when.id() + "\" data-value=\"" + Html.escaped(when.value()) + "\"";
        String id = id(control.id());
        line("<div class=\"field\"" + condition + ">");
        line("<label for=\"" + id + "\">" + Html.escaped(control.label()) + "</label>");
        if (control instanceof Control.NumberField field) {
            number(field, id);
        } else if (control instanceof Control.Choice choice) {
            select(choice.id(), choice.options(), choice.options().get(0).value(), "");
        }
        line("<p class=\"error\" id=\"" + id + "-error\" hidden></p>");
        line("</div>");
    }

    private void number(Control.NumberField field, String id) {
        String hint = field.hint().isEmpty() ? "" : id + "-hint ";
        out.append("<div class=\"pair\"><input type=\"text\" id=\"" + id + "\" name=\"" + field.id() + "\" value=\""
                + Html.escaped(field.initial()) + "\" spellcheck=\"false\" aria-describedby=\"" + hint + id
                + "-error\">");
        if (field.units().size() > 1) {
            line("");
            select(
                    field.unitId(),
                    field.units(),
                    field.initialUnit(),
                    " aria-label=\"Unit of " + Html.escaped(field.label()) + "\"");
        } else {
            line("<span class=\"unit\">" + Html.escaped(field.initialUnit()) + "</span>");
        }
        line("</div>");
        if (!hint.isEmpty()) {
            line("<p class=\"hint\" id=\"" + id + "-hint\">" + Html.escaped(field.hint()) + "</p>");
        }
    }

    private void select(String name, List<Control.Option> options, String chosen, String attributes) {
        line("<select id=\"" + id(name) + "\" name=\"" + name + "\"" + attributes + ">");
        for (Control.Option option : options) {
            line("<option value=\"" + Html.escaped(option.value()) + "\""
                    + (option.value().equals(chosen) ? " selected" : "") + ">" + Html.escaped(option.label())
                    + "</option>");
        }
        line("</select>");
    }

    private void cautions() {
        List<Caution> cautions = PageHtml.cautions(part);
        if (cautions.isEmpty()) {
            return;
        }
        line("<div class=\"cautions\">");
        line("<h3>Take care</h3>");
        line("<ul>");
        cautions.forEach(caution -> line("<li>" + Html.escaped(caution.text()) + "</li>"));
        line("</ul>");
        line("</div>");
    }

    private String id(String control) {
        return part.id() + "-" + control;
    }

    private void line(String html) {
        out.append(html).append('\n');
    }
}
