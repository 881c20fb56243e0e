package planted.string;

/** A feature's public record. */
public record Line(int metres) {}
