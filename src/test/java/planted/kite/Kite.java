package planted.kite;

/** A feature's public record: anybody may use it. */
public record Kite(String name) {}
