package org.vanewright.catalogue;

import java.util.Arrays;
import java.util.function.DoubleFunction;

/** Ranges that a figure may lie in, each from its lower edge to just under the next. */
public enum Bands {
    /** Mean chord of a wing. */
    CHORD(Facet.CHORD, "mm", 900, 1200, 1500, 1800),
    /** Height of a vane above its base. */
    HEIGHT(Facet.HEIGHT, "mm", 6, 8, 10, 15),
    /** Place of a row behind the leading edge, in hundredths of the local chord. */
    POSITION(Facet.POSITION, "%", 5, 8, 12, 20, 40),
    /** Size of a change, in hundredths of the unmodified aircraft's mean. */
    CHANGE(Facet.CHANGE, "%", 1, 2, 4, 8);

    private static final double ROUNDING = 1e-9;

    private final Facet facet;
    private final String unit;
    private final int[] edges;

    Bands(Facet facet, String unit, int... edges) {
        this.facet = facet;
        this.unit = unit;
        this.edges = edges;
    }

    /** The range that a figure in this unit lies in. */
    public FacetValue of(double figure) {
        int above = (int) Arrays.stream(edges)
                .filter(edge -> figure >= edge - ROUNDING * edge)
                .count();
        return new FacetValue(facet, choice(above), label(above), above);
    }

    /**
     * A range in words.
     *
     * @param place of its facet value
     * @param figure writes an edge with its unit
     */
    public String words(int place, DoubleFunction<String> figure) {
        if (place == 0) {
            return "under " + figure.apply(edges[0]);
        }
        return place >= edges.length
                ? figure.apply(edges[edges.length - 1]) + " and more"
                : figure.apply(edges[place - 1]) + " to under " + figure.apply(edges[place]);
    }

    private String choice(int place) {
        if (place == 0) {
            return "under-" + edges[0];
        }
        return place == edges.length ? edges[place - 1] + "-up" : edges[place - 1] + "-" + edges[place];
    }

    private String label(int place) {
        return place == 0 || place == edges.length
                ? words(place, edge -> (int) edge + " " + unit)
                : edges[place - 1] + " to under " + edges[place] + " " + unit;
    }
}
