// Shows a device's solid in three dimensions over its still drawing, which stays where WebGL is missing.
import {
  AmbientLight, BufferAttribute, BufferGeometry, Color, DirectionalLight, EdgesGeometry, LineBasicMaterial, LineSegments,
  Mesh, MeshLambertMaterial, OrthographicCamera, Scene, WebGLRenderer,
} from '../webjars/three/build/three.module.min.js';
import { readBinaryStl } from './stl.js';
import { Turntable } from './turntable.js';

const SHARP_DEG = 25;
const STEP = Math.PI / 12;
const HOME = { azimuth: Math.PI / 4, elevation: 0.6155, zoom: 1.2 };

function colour(name) {
  return new Color(getComputedStyle(document.documentElement).getPropertyValue(name).trim());
}

class SolidView {
  constructor(figure, positions) {
    this.geometry = new BufferGeometry();
    this.geometry.setAttribute('position', new BufferAttribute(positions, 3));
    this.geometry.computeVertexNormals();
    this.geometry.computeBoundingSphere();
    this.canvas = document.createElement('canvas');
    this.canvas.setAttribute('role', 'img');
    this.canvas.setAttribute('aria-label', figure.dataset.label);
    this.renderer = new WebGLRenderer({ canvas: this.canvas, antialias: true, preserveDrawingBuffer: true });
    this.camera = new OrthographicCamera();
    this.camera.up.set(0, 0, 1);
    this.turntable = new Turntable(this.canvas, HOME, () => this.later());
    this.build();
  }

  build() {
    this.scene = new Scene();
    this.surface = new MeshLambertMaterial({ flatShading: true, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
    this.ink = new LineBasicMaterial();
    this.lamp = new DirectionalLight(0xffffff, 2.2);
    this.scene.add(new Mesh(this.geometry, this.surface));
    this.scene.add(new LineSegments(new EdgesGeometry(this.geometry, SHARP_DEG), this.ink));
    this.scene.add(new AmbientLight(0xffffff, 1.2));
    this.scene.add(this.lamp);
  }

  paint() {
    this.scene.background = colour('--sheet');
    this.surface.color = colour('--solid');
    this.ink.color = colour('--ink');
    this.later();
  }

  fit() {
    const { clientWidth, clientHeight } = this.canvas;
    if (!clientWidth || !clientHeight) return;
    this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
    this.renderer.setSize(clientWidth, clientHeight, false);
    this.later();
  }

  /** One picture a frame at most, and none while nothing changes. */
  later() {
    this.pending ??= requestAnimationFrame(() => {
      this.pending = undefined;
      this.draw();
    });
  }

  draw() {
    const { center, radius } = this.geometry.boundingSphere;
    const [x, y, z] = this.turntable.direction();
    const aspect = this.canvas.clientWidth / this.canvas.clientHeight || 1;
    const half = radius * 1.06 / this.turntable.zoom;
    const high = aspect < 1 ? half / aspect : half;
    Object.assign(this.camera, { left: -high * aspect, right: high * aspect, top: high, bottom: -high, near: 0, far: radius * 8 });
    this.camera.position.set(center.x + x * radius * 4, center.y + y * radius * 4, center.z + z * radius * 4);
    // Straight from above there is no upright: let the air come from the left.
    this.camera.up.set(...(Math.abs(z) > 0.999 ? [Math.cos(this.turntable.azimuth) * z, Math.sin(this.turntable.azimuth) * z, 0] : [0, 0, 1]));
    this.camera.lookAt(center);
    this.camera.updateProjectionMatrix();
    this.lamp.position.copy(this.camera.position).add({ x: 0, y: 0, z: radius * 3 });
    this.lamp.target.position.copy(center);
    this.lamp.target.updateMatrixWorld();
    this.renderer.render(this.scene, this.camera);
    this.canvas.dataset.drawn = 'yes';
  }
}

function buttons(turntable) {
  const group = document.createElement('div');
  group.className = 'solid-buttons';
  group.setAttribute('role', 'group');
  group.setAttribute('aria-label', 'Turn the solid');
  const add = (label, sign, act) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'quiet small';
    button.textContent = sign;
    button.setAttribute('aria-label', label);
    button.title = label;
    button.addEventListener('click', act);
    group.append(button);
  };
  add('Turn left', '←', () => turntable.turn(-STEP, 0));
  add('Turn right', '→', () => turntable.turn(STEP, 0));
  add('Tilt towards you', '↓', () => turntable.turn(0, STEP));
  add('Tilt away', '↑', () => turntable.turn(0, -STEP));
  add('Nearer', '+', () => turntable.nearer(1.25));
  add('Farther', '−', () => turntable.nearer(0.8));
  add('As at first', '⟲', () => turntable.reset());
  return group;
}

async function show(figure) {
  const response = await fetch(figure.dataset.solid);
  if (!response.ok) throw new Error(`solid: ${response.status}`);
  const view = new SolidView(figure, readBinaryStl(await response.arrayBuffer()));
  const still = figure.querySelector('.solid-still');
  still.after(view.canvas, buttons(view.turntable));
  still.hidden = true;
  figure.querySelector('.solid-hint').hidden = false;
  new ResizeObserver(() => view.fit()).observe(view.canvas);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => view.paint());
  view.canvas.addEventListener('webglcontextlost', () => {
    still.hidden = false;
    view.canvas.hidden = true;
  });
  view.paint();
}

document.querySelectorAll('[data-solid]').forEach((figure) => {
  // Without WebGL the still drawing simply stays.
  show(figure).catch((error) => console.info('still drawing kept:', error.message));
});
