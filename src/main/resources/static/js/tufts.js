// Tapping a tuft on the map steps through what it did; the buttons beneath say the same and work without this.
const form = document.querySelector("[data-tufts]");

const draw = (field, kind) => {
  const tuft = form.querySelector(`[data-tuft="${CSS.escape(field)}"]`);
  if (tuft) {
    tuft.setAttribute("class", `tuft tuft-${kind}`);
    tuft.querySelector("use").setAttribute("href", `#tuft-${kind}`);
  }
};

if (form) {
  form.querySelectorAll("[data-tap]").forEach((hint) => (hint.hidden = false));
  // What was computed from the form as it was sent no longer holds once it is changed.
  const stale = () => form.querySelectorAll(".tuft-line, .tuft-line-halo, .tuft-figure > .small").forEach((e) => e.remove());

  form.addEventListener("change", (event) => {
    if (event.target.dataset.kind) {
      draw(event.target.name, event.target.dataset.kind);
      stale();
    }
  });

  form.addEventListener("click", (event) => {
    const tuft = event.target.closest("[data-tuft]");
    if (tuft) {
      const picks = [...form.querySelectorAll(`input[name="${CSS.escape(tuft.dataset.tuft)}"]`)];
      const next = picks[(picks.findIndex((pick) => pick.checked) + 1) % picks.length];
      next.checked = true;
      next.dispatchEvent(new Event("change", { bubbles: true }));
    }
  });
}
