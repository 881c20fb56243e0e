package org.vanewright.record.provenance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a document says about where its figures come from.
 *
 * @param stated its entries
 * @param groups the figures it has
 */
public record FigureOrigins(List<FigureOrigin> stated, List<FigureGroup> groups) {
    /** Said of a figure whose origin nobody gave. */
    public static final String NOT_STATED = "origin not stated";

    /** The entry that counts for a figure. */
    public Optional<FigureOrigin> of(String path) {
        return stated.stream()
                .filter(entry -> entry.covers(path))
                .max(Comparator.comparingInt(
                        entry -> String.valueOf(entry.figures()).length()));
    }

    /** The origin of a figure in a few words. */
    public String label(String path) {
        return of(path).map(FigureOrigin::origin).map(Origin::label).orElse(NOT_STATED);
    }

    /** What people call the figures at a path; the path itself where they have no name for it. */
    public String words(String path) {
        return groups.stream()
                .filter(group -> group.path().equals(path))
                .findFirst()
                .map(FigureGroup::words)
                .orElse(path);
    }

    /** Groups without an origin; the parts of a group only where some part has one. */
    public List<FigureGroup> notStated() {
        List<FigureGroup> without = new ArrayList<>();
        topGroups().forEach(group -> collect(group, without));
        return List.copyOf(without);
    }

    /** Groups that are no part of another. */
    public List<FigureGroup> topGroups() {
        return groups.stream().filter(group -> parents(group).isEmpty()).toList();
    }

    /** Whether every figure of a group has an origin. */
    public boolean isStated(FigureGroup group) {
        List<FigureGroup> without = new ArrayList<>();
        collect(group, without);
        return without.isEmpty();
    }

    private void collect(FigureGroup group, List<FigureGroup> without) {
        if (of(group.path()).isPresent()) {
            return;
        }
        boolean inPart =
                stated.stream().anyMatch(entry -> FigurePaths.isWithin(String.valueOf(entry.figures()), group.path()));
        List<FigureGroup> parts = parts(group);
        if (!inPart || parts.isEmpty()) {
            without.add(group);
        } else {
            parts.forEach(part -> collect(part, without));
        }
    }

    private List<FigureGroup> parents(FigureGroup group) {
        return groups.stream()
                .filter(other -> other != group && FigurePaths.isWithin(group.path(), other.path()))
                .toList();
    }

    private List<FigureGroup> parts(FigureGroup group) {
        return groups.stream()
                .filter(part -> part != group && FigurePaths.isWithin(part.path(), group.path()))
                .filter(part -> parents(part).stream()
                        .noneMatch(between -> between != group && FigurePaths.isWithin(between.path(), group.path())))
                .toList();
    }
}
