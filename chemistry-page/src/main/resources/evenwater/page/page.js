"use strict";
// Reads the forms, asks the program, and writes its answers into the page. Computes nothing itself.
(function () {
  const PAUSE_IN_MILLISECONDS = 300;

  function element(name, text, className) {
    const made = document.createElement(name);
    if (text !== undefined) {
      made.textContent = text;
    }
    if (className) {
      made.className = className;
    }
    return made;
  }

  function setUp(form) {
    const part = form.dataset.part;
    const answer = document.querySelector('[data-answer="' + part + '"]');
    const summary = answer.querySelector(".summary");
    let timer = 0;

    function showAskedFields() {
      for (const field of form.querySelectorAll("[data-when]")) {
        field.hidden = form.elements[field.dataset.when].value !== field.dataset.value;
      }
    }

    function ask() {
      const names = [];
      const values = [];
      for (const control of form.elements) {
        if (control.name) {
          names.push(control.name);
          values.push(control.value);
        }
      }
      return JSON.parse(evenwaterAnswer(part, names, values));
    }

    function showProblems(problems) {
      const messages = new Map(problems.map((problem) => [problem.control, problem.message]));
      for (const control of form.elements) {
        const error = control.name && document.getElementById(control.id + "-error");
        if (!error) {
          continue;
        }
        const message = messages.get(control.name);
        error.hidden = message === undefined;
        error.textContent = message === undefined ? "" : message;
        if (message === undefined) {
          control.removeAttribute("aria-invalid");
        } else {
          control.setAttribute("aria-invalid", "true");
        }
      }
    }

    function table(figures) {
      const made = element("table");
      made.append(element("caption", figures.title));
      const head = made.createTHead().insertRow();
      for (const words of ["What", "Value", "Unit"]) {
        const cell = element("th", words);
        cell.scope = "col";
        head.append(cell);
      }
      const body = made.createTBody();
      for (const figure of figures.figures) {
        const row = body.insertRow();
        const label = element("th", figure.label);
        label.scope = "row";
        const value = element("td", figure.text, "value");
        value.dataset.figure = figure.name;
        value.dataset.value = String(figure.value);
        row.append(label, value, element("td", figure.unit, "unit"));
      }
      return made;
    }

    function mistake(found) {
      const made = element("div", undefined, "mistake");
      made.append(element("p", "A usual wrong answer: " + found.name, "title"));
      made.append(element("p", found.calculation, "calculation"), element("p", found.reason + "."));
      return made;
    }

    function solution(worked) {
      const list = element("ol");
      for (const step of worked.steps) {
        const item = element("li");
        item.append(element("p", step.title, "title"), element("p", step.calculation, "calculation"));
        if (step.note) {
          item.append(element("p", "(" + step.note + ")"));
        }
        list.append(item);
      }
      const made = element("div", undefined, "solution");
      made.append(element("h4", worked.question), list, ...worked.mistakes.map(mistake));
      return made;
    }

    function show(found) {
      showProblems(found.problems);
      if (summary.textContent !== found.summary) {
        summary.textContent = found.summary; // the same words again would be read out again
      }
      answer.classList.toggle("refused", found.problems.length > 0);
      answer.querySelector(".figures").replaceChildren(...found.tables.map(table));
      const way = found.solutions.length === 0 ? [] : [element("h3", "The way there")];
      answer.querySelector(".steps").replaceChildren(...way, ...found.solutions.map(solution));
      const notes = answer.querySelector(".notes");
      notes.replaceChildren(...found.notes.map((note) => element("li", note)));
      notes.hidden = found.notes.length === 0;
    }

    function update() {
      clearTimeout(timer);
      showAskedFields();
      const found = ask();
      show(found);
      return found;
    }

    form.addEventListener("submit", function (event) {
      event.preventDefault();
      const problems = update().problems;
      if (problems.length > 0) {
        form.elements[problems[0].control].focus();
      }
    });
    form.addEventListener("change", update);
    form.addEventListener("input", function () {
      clearTimeout(timer);
      timer = setTimeout(update, PAUSE_IN_MILLISECONDS); // not at every key: a screen reader would talk over the typing
    });
    update();
  }

  document.querySelectorAll("form[data-part]").forEach(setUp);
})();
