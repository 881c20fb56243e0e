package org.vanewright.engineering.flow;

/** Evenly spaced angles one after the other, each started from what the two before it lead to. */
final class Sweep {
    private final Coupling coupling;
    private CoupledFlow before;
    private CoupledFlow here;

    Sweep(Coupling coupling, CoupledFlow before, CoupledFlow here) {
        this.coupling = coupling;
        this.before = before;
        this.here = here;
    }

    CoupledFlow next(double angleRad) {
        CoupledFlow found = coupling.atAngle(angleRad, CarriedOn.from(before, here, coupling.grid()));
        before = here;
        here = found;
        return found;
    }
}
