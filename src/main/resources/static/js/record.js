// Keeps a test point as it is typed, and what was saved without a connection until there is one again. Without this module
// the form is sent as any other.
const form = document.querySelector('form[data-record]');
const note = document.getElementById('waiting');
const kind = form.elements.kind.value;
const typedKey = `vanewright:typed:${form.dataset.record}:${kind}`;
const queueKey = `vanewright:waiting:${form.dataset.record}`;

function stored(key, otherwise) {
  try {
    return JSON.parse(localStorage.getItem(key)) ?? otherwise;
  } catch {
    return otherwise;
  }
}

function store(key, value) {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false; // a private window may keep nothing; then the form is sent as it stands
  }
}

function fields() {
  const typed = {};
  new FormData(form).forEach((value, name) => {
    if (name !== '_csrf') typed[name] = value;
  });
  return typed;
}

function tell(message) {
  note.textContent = message;
  note.hidden = message === '';
}

function showWaiting() {
  const count = stored(queueKey, []).length;
  tell(count === 0 ? '' : `${count === 1 ? 'One test point waits' : `${count} test points wait`} on this device for a connection.`);
}

/** True when the server has taken it; its id makes a second sending harmless. */
async function send(typed) {
  const body = new URLSearchParams({ ...typed, _csrf: form.elements._csrf.value });
  const answer = await fetch(form.action, { method: 'POST', body, redirect: 'follow' });
  if (answer.ok && new URL(answer.url).searchParams.has('saved')) return true;
  throw Object.assign(new Error('refused'), { refused: true });
}

let sending = false;
async function sendWaiting() {
  if (sending || !navigator.onLine) return;
  sending = true;
  try {
    let waiting = stored(queueKey, []);
    while (waiting.length > 0) {
      await send(waiting[0]);
      waiting = stored(queueKey, []).filter((typed) => typed.id !== waiting[0].id);
      store(queueKey, waiting.length ? waiting : null);
      showWaiting();
    }
  } catch (error) {
    showWaiting();
    if (error.refused) tell(`${note.textContent} The server did not take the first one: sign in again, or look at it in the form.`);
  } finally {
    sending = false;
  }
}

/** The next form, as the server would give it: what belongs to one point is emptied, what goes on stays. */
function next() {
  const once = ['indicatedAirspeedKt', 'entryRateKtPerS', 'warningAirspeedKt', 'wingDropDeg', 'loadFactor', 'climbRateFtPerMin', 'fuelUsedKg', 'at', 'remark'];
  once.forEach((name) => {
    if (form.elements[name]) form.elements[name].value = '';
  });
  form.querySelectorAll('[name^="legs["]').forEach((field) => {
    field.value = '';
  });
  form.elements.id.value = crypto.randomUUID?.() ?? `p-${Date.now()}-${Math.floor(Math.random() * 1e9)}`;
  store(typedKey, null);
  form.querySelector('#indicatedAirspeedKt')?.focus();
}

form.addEventListener('input', () => store(typedKey, fields()));

form.addEventListener('submit', async (event) => {
  const typed = fields();
  if (navigator.onLine) {
    store(typedKey, null);
    return; // the page itself goes on, and shows what is wrong beside its field
  }
  event.preventDefault();
  if (store(queueKey, [...stored(queueKey, []), typed])) {
    next();
    showWaiting();
  } else {
    tell('There is no connection, and this browser keeps nothing. Leave this page open and try again.');
  }
});

const before = stored(typedKey, null);
const refused = document.querySelector('.problems.some') !== null;
if (before && !refused) {
  Object.entries(before).forEach(([name, value]) => {
    const field = form.elements[name];
    if (field && name !== 'kind' && name !== 'units') field.value = value;
  });
}
window.addEventListener('online', sendWaiting);
showWaiting();
sendWaiting();

if ('serviceWorker' in navigator) {
  const at = (path) => new URL(path, import.meta.url);
  navigator.serviceWorker.register(at('../record-worker.js'), { scope: at('../campaigns/').pathname });
}
