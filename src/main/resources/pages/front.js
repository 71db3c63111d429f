'use strict';
// The page works without this file; with it an answer arrives without leaving the form, and texts are copied by a button.
(() => {
  const form = document.getElementById('form');
  const status = document.getElementById('status');
  let asking = null;

  const say = (text) => { status.textContent = text; };

  // Behind a gateway the service does not know the address that the browser knows.
  const readdress = (root) => {
    const base = document.body.dataset.base;
    if (base !== location.origin) {
      root.querySelectorAll('.take code').forEach((code) => {
        code.textContent = code.textContent.replaceAll(base, location.origin);
      });
    }
  };

  const copy = async (code) => {
    try {
      await navigator.clipboard.writeText(code.textContent);
    } catch {
      getSelection().selectAllChildren(code);
      document.execCommand('copy');
    }
  };

  const addCopyButtons = (root) => {
    root.querySelectorAll('.take').forEach((take) => {
      const code = take.querySelector('code');
      const title = take.querySelector('h4');
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'copy';
      button.textContent = 'Copy';
      button.setAttribute('aria-label', `Copy: ${title.textContent}`);
      button.addEventListener('click', async () => {
        await copy(code);
        say(`Copied: ${title.textContent.replace(/Copy$/, '').trim()}`);
      });
      title.append(button);
    });
  };

  const enhance = (root) => {
    readdress(root);
    addCopyButtons(root);
  };

  // What the answering page says of each field; what is typed stays.
  const showFaults = (page) => {
    page.querySelectorAll('#form .error').forEach((error) => {
      const here = document.getElementById(error.id);
      if (!here) {
        return;
      }
      here.textContent = error.textContent;
      const field = here.closest('.field');
      const control = field.querySelector('input, select');
      const wrong = error.textContent.trim() !== '';
      field.classList.toggle('wrong', wrong);
      if (wrong) {
        control.setAttribute('aria-invalid', 'true');
        control.closest('details')?.setAttribute('open', '');
      } else {
        control.removeAttribute('aria-invalid');
      }
    });
  };

  const summary = (answer) => {
    const refused = answer.querySelectorAll('.refusal li').length;
    if (refused) {
      return refused === 1 ? 'No answer: one fault is listed below.' : `No answer: ${refused} faults are listed below.`;
    }
    const dangers = answer.querySelectorAll('.alerts .danger').length;
    const first = answer.querySelector('.figures div');
    const figure = first ? `${first.querySelector('dt').textContent} ${first.querySelector('dd').textContent}.` : '';
    return `${dangers ? 'Danger, see the warning. ' : ''}Answer below. ${figure}`;
  };

  const ask = async (address) => {
    asking?.abort();
    asking = new AbortController();
    say('Calculating …');
    const headers = { Accept: 'text/html' };
    const key = form.elements.namedItem('key')?.value;
    if (key) {
      headers['X-API-Key'] = key;
    }
    const reply = await fetch(address, { headers, signal: asking.signal });
    if (reply.status === 401 || reply.status === 429) {
      say(reply.status === 401 ? 'This key is not known here.' : 'This key has used up its requests for now.');
      return null;
    }
    const page = new DOMParser().parseFromString(await reply.text(), 'text/html');
    const answer = page.getElementById('answer');
    if (!answer) {
      throw new Error(`status ${reply.status}`);
    }
    document.getElementById('answer').replaceWith(document.adoptNode(answer));
    document.title = page.title;
    enhance(answer);
    showFaults(page);
    say(summary(answer));
    return answer;
  };

  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const fields = [...new FormData(form)].filter(([name, value]) => name !== 'key' && value.trim() !== '');
    const filled = new Set(fields.map(([name]) => name));
    // The unit of an empty field says nothing.
    const sent = fields.filter(([name]) => !name.endsWith('Unit') || filled.has(name.slice(0, -4)));
    if (!filled.has('refrigerant')) {
      sent.push(['refrigerant', '']);
    }
    const address = `/?${new URLSearchParams(sent)}`;
    try {
      const answer = await ask(address);
      if (!answer) {
        return;
      }
      history.pushState(null, '', address);
      const wrong = form.querySelector('[aria-invalid="true"]');
      if (wrong) {
        wrong.focus();
      } else {
        answer.scrollIntoView({ block: 'start' });
      }
    } catch (error) {
      if (error.name !== 'AbortError') {
        say('The service did not answer. Try again in a moment.');
      }
    }
  });

  addEventListener('popstate', () => location.reload());

  // Fields that are still empty follow the units of the answer.
  document.getElementById('units').addEventListener('change', (event) => {
    const si = event.target.value.startsWith('SI');
    form.querySelectorAll('.reading').forEach((reading) => {
      const select = reading.querySelector('select');
      if (select && reading.querySelector('input').value === '' && [select.dataset.ip, select.dataset.si].includes(select.value)) {
        select.value = si ? select.dataset.si : select.dataset.ip;
      }
    });
  });

  enhance(document);
})();
