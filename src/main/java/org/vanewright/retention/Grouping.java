package org.vanewright.retention;

/** By what devices are compared. */
public enum Grouping {
    ALL("Nothing: all together"),
    ADHESIVE("Adhesive"),
    MATERIAL("Material"),
    FINISH("Surface"),
    ROW("Row");

    private final String label;

    Grouping(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    String of(WatchedInstallation installation, WatchedDevice device) {
        return switch (this) {
            case ALL -> "All devices";
            case ADHESIVE -> installation.adhesive();
            case MATERIAL -> installation.material();
            case FINISH -> installation.finish();
            case ROW -> installation.layoutName() + ": " + device.row();
        };
    }
}
