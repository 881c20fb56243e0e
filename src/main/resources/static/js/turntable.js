// Turns a camera about a piece: by drag, wheel with Ctrl, pinch, and buttons.
const QUARTER = Math.PI / 2;

export class Turntable {
  constructor(canvas, home, onChange) {
    this.home = home;
    this.onChange = onChange;
    this.pointers = new Map();
    Object.assign(this, home);
    canvas.addEventListener('pointerdown', (e) => {
      this.pointers.set(e.pointerId, e);
      canvas.setPointerCapture(e.pointerId);
    });
    canvas.addEventListener('pointermove', (e) => this.move(e));
    for (const end of ['pointerup', 'pointercancel']) {
      canvas.addEventListener(end, (e) => this.pointers.delete(e.pointerId));
    }
    // A plain wheel goes on scrolling the page.
    canvas.addEventListener('wheel', (e) => {
      if (!e.ctrlKey) return;
      e.preventDefault();
      this.nearer(Math.exp(-e.deltaY / 400));
    }, { passive: false });
  }

  move(event) {
    const before = this.pointers.get(event.pointerId);
    if (!before) return;
    if (this.pointers.size === 2) {
      const other = [...this.pointers.values()].find((p) => p.pointerId !== event.pointerId);
      const apart = (p) => Math.max(1, Math.hypot(p.clientX - other.clientX, p.clientY - other.clientY));
      this.nearer(apart(event) / apart(before));
    } else {
      this.turn((before.clientX - event.clientX) / 120, (event.clientY - before.clientY) / 120);
    }
    this.pointers.set(event.pointerId, event);
  }

  /** Angles in radians. */
  turn(azimuth, elevation) {
    this.azimuth += azimuth;
    this.elevation = Math.max(-QUARTER, Math.min(QUARTER, this.elevation + elevation));
    this.onChange();
  }

  nearer(factor) {
    this.zoom = Math.max(0.5, Math.min(8, this.zoom * factor));
    this.onChange();
  }

  reset() {
    Object.assign(this, this.home);
    this.onChange();
  }

  /** From the piece towards the viewer, device axes. */
  direction() {
    const level = Math.cos(this.elevation);
    return [-level * Math.cos(this.azimuth), -level * Math.sin(this.azimuth), Math.sin(this.elevation)];
  }
}
