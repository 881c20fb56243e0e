// After a preview, puts each problem beside its field and takes away those that are solved.
function mark(field, message, kind) {
  const error = document.getElementById(`${field.id}-error`);
  if (!error) return;
  error.textContent = message;
  const around = field.closest('.field')?.classList;
  around?.toggle('refused', kind === 'refused');
  around?.toggle('wanted', kind === 'wanted');
  if (kind === 'refused') field.setAttribute('aria-invalid', 'true');
  else field.removeAttribute('aria-invalid');
}

function showProblems(form, summary) {
  const messages = new Map();
  const kinds = new Map();
  summary.querySelectorAll('li[data-field]').forEach((li) => {
    messages.set(li.dataset.field, li.querySelector('.message').textContent);
    kinds.set(li.dataset.field, li.dataset.mark);
  });
  form.querySelectorAll('input[name], select[name], textarea[name]').forEach((field) => {
    // A field nobody has been in yet is not complained about.
    const seen = field.dataset.touched || field.closest('.refused, .wanted');
    if (seen) mark(field, messages.get(field.id) ?? '', kinds.get(field.id));
  });
  // What is wrong with a group as a whole, such as a row on top of another.
  form.querySelectorAll('.group-error').forEach((error) => {
    error.textContent = messages.get(error.id.replace(/-error$/, '')) ?? '';
  });
}

document.addEventListener('change', (event) => {
  if (event.target.matches('form[data-live] :is(input, select, textarea)')) event.target.dataset.touched = 'yes';
});

document.addEventListener('htmx:afterSwap', (event) => {
  const form = document.querySelector('form[data-live]');
  const summary = event.target.querySelector?.('[data-problems]');
  if (form && summary) showProblems(form, summary);
});
