package org.vanewright.installation;

/** What the devices were stuck to. */
public enum SurfaceFinish {
    GLOSS_PAINT("Gloss paint"),
    MATT_PAINT("Matt paint"),
    BARE_METAL("Bare metal"),
    GEL_COAT("Gel coat"),
    DOPED_FABRIC("Doped or painted fabric"),
    FILM("Covering film"),
    OTHER("Something else");

    private final String label;

    SurfaceFinish(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
