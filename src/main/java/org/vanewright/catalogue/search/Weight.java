package org.vanewright.catalogue.search;

/** How much a word counts by where it stands. PostgreSQL knows the four by letters; A counts most. */
enum Weight {
    NAME('A', 10),
    SUBJECT('B', 4),
    NOTE('C', 2),
    KIND('D', 1);

    private final char letter;
    private final int points;

    Weight(char letter, int points) {
        this.letter = letter;
        this.points = points;
    }

    char letter() {
        return letter;
    }

    int points() {
        return points;
    }
}
