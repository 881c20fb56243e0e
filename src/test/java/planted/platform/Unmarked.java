package planted.platform;

/** Is in a package without {@code package-info}. */
public class Unmarked {}
