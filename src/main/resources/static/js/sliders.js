// Ties each range to the number field beside it. The field is what is sent; without scripts the range stays hidden.
const fieldOf = (range) => document.getElementById(range.dataset.slides);

function reveal() {
  document.querySelectorAll('input[type=range][data-slides]').forEach((range) => {
    range.hidden = false;
  });
}

function choose(choice) {
  const [id, value] = choice.split(':');
  const select = document.getElementById(id);
  if (select) select.value = value;
}

document.addEventListener('input', (event) => {
  const { target } = event;
  if (target.matches('input[type=range][data-slides]')) {
    const field = fieldOf(target);
    if (field) field.value = target.value;
    if (target.dataset.chooses) choose(target.dataset.chooses);
    return;
  }
  const range = document.querySelector(`input[type=range][data-slides="${CSS.escape(target.id)}"]`);
  const typed = Number(target.value.replace(',', '.'));
  if (range && target.value.trim() && Number.isFinite(typed)) range.value = typed;
});

document.addEventListener('htmx:afterSwap', reveal);
reveal();
