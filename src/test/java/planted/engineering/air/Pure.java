package planted.engineering.air;

/** Breaks nothing. */
public record Pure(double value) {}
