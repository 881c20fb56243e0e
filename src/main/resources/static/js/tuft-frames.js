// Marks tufts by taps on the first frame: root, then tip, tuft by tuft. The lines beneath are what is sent, and can be
// typed without this module. The picture is drawn from the chosen file; nothing is sent for it.
const form = document.querySelector("[data-frames]");
const LARGEST = 2400;

function lines(text) {
  const marks = new Map();
  text.split(/\n/).forEach((line) => {
    const numbers = line.trim().split(/[;:\s]+/).map((n) => Number(n.replace(",", ".")));
    if (numbers.length === 5 && numbers.every(Number.isFinite)) marks.set(numbers[0], numbers.slice(1));
  });
  return marks;
}

if (form && "createImageBitmap" in window) {
  const files = form.querySelector("input[type=file]");
  const typed = form.querySelector("textarea[name=marks]");
  const box = form.querySelector("[data-marking]");
  const ask = form.querySelector("[data-ask]");
  const canvas = box.querySelector("canvas");
  const places = [...form.querySelectorAll("[data-place]")].map((p) => p.textContent);
  const skipped = new Set();
  const done = [];
  let picture = null;
  let scale = 1;
  let root = null;
  box.hidden = false;

  const next = () => {
    const marks = lines(typed.value);
    for (let i = 1; i <= places.length; i++) if (!marks.has(i) && !skipped.has(i)) return i;
    return 0;
  };

  const write = (marks) => {
    typed.value = [...marks].sort((a, b) => a[0] - b[0]).map(([tuft, m]) => `${tuft} ${m.join(" ")}`).join("\n");
  };

  const draw = () => {
    const tuft = next();
    ask.textContent = !picture
      ? "Choose the files first."
      : !tuft
        ? `Every tuft is marked or left out: ${lines(typed.value).size} marked.`
        : root
          ? `Tuft ${tuft}, ${places[tuft - 1]}: tap where its tip lies in attached flow.`
          : `Tuft ${tuft}, ${places[tuft - 1]}: tap its root.`;
    if (!picture) return;
    const pen = canvas.getContext("2d");
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    const size = Math.max(2, canvas.width / 400);
    const stroke = (points, width, colour) => {
      pen.lineWidth = width;
      pen.strokeStyle = colour;
      pen.beginPath();
      points.forEach(([x, y], i) => (i ? pen.lineTo(x, y) : pen.moveTo(x, y)));
      pen.stroke();
    };
    const dot = (x, y, colour) => {
      pen.fillStyle = colour;
      pen.beginPath();
      pen.arc(x, y, 1.6 * size, 0, 2 * Math.PI);
      pen.fill();
    };
    pen.font = `${7 * size}px sans-serif`;
    const shown = (p) => (p + 0.5) * scale;
    lines(typed.value).forEach((mark, number) => {
      const [x, y, tx, ty] = mark.map(shown);
      stroke([[x, y], [tx, ty]], 2.2 * size, "#fff");
      stroke([[x, y], [tx, ty]], size, "#a0105c");
      dot(x, y, "#a0105c");
      pen.lineWidth = size;
      pen.strokeStyle = "#fff";
      pen.fillStyle = "#a0105c";
      pen.strokeText(number, x + 2 * size, y - 2 * size);
      pen.fillText(number, x + 2 * size, y - 2 * size);
    });
    if (root) dot(...root.map(shown), "#0a66c2");
  };

  const load = async () => {
    picture = null;
    if (files.files.length) {
      try {
        picture = await createImageBitmap(files.files[0], { imageOrientation: "from-image" });
        scale = Math.min(1, LARGEST / Math.max(picture.width, picture.height));
        canvas.width = Math.round(picture.width * scale);
        canvas.height = Math.round(picture.height * scale);
      } catch {
        ask.textContent = "The first file is no picture that can be shown here.";
        return;
      }
    }
    draw();
  };

  canvas.addEventListener("click", (event) => {
    const tuft = next();
    if (!picture || !tuft) return;
    const { width, height } = canvas.getBoundingClientRect();
    const at = [
      Math.round((event.offsetX / width) * picture.width - 0.5),
      Math.round((event.offsetY / height) * picture.height - 0.5),
    ].map((p, i) => Math.max(0, Math.min((i ? picture.height : picture.width) - 1, p)));
    if (!root) {
      root = at;
    } else {
      write(lines(typed.value).set(tuft, [...root, ...at]));
      done.push(tuft);
      root = null;
    }
    draw();
  });

  form.querySelector("[data-skip]").addEventListener("click", () => {
    const tuft = next();
    if (tuft) {
      skipped.add(tuft);
      done.push(-tuft);
      root = null;
    }
    draw();
  });

  form.querySelector("[data-back]").addEventListener("click", () => {
    if (root) {
      root = null;
    } else {
      const last = done.pop();
      skipped.delete(-last);
      const marks = lines(typed.value);
      marks.delete(last);
      if (last) write(marks);
    }
    draw();
  });

  form.querySelector("[data-larger]").addEventListener("change", (event) => {
    canvas.parentElement.classList.toggle("larger", event.target.checked);
  });
  files.addEventListener("change", load);
  typed.addEventListener("input", draw);
  load();
}
