package org.vanewright.platform.form;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.Quantity;
import org.vanewright.platform.page.UnitSystem;

/**
 * What a person typed, by field path such as {@code surfaces[0].panels[1].outerChordMm}, with the problems found in it.
 * Nothing typed is ever lost: reading a value never changes it. The form carries its own unit system in a hidden field,
 * so that switching units elsewhere cannot change the meaning of what stands here.
 */
public final class Form {
    /** Name of the hidden field. */
    public static final String UNITS = "units";

    private static final int MAX_FIELDS = 5000;
    private static final Pattern PLACE = Pattern.compile("(line \\d+|file):");
    private static final Pattern PATH = Pattern.compile(
            "[A-Za-z][A-Za-z0-9]{0,40}(\\[\\d{1,2}])?(\\.[A-Za-z][A-Za-z0-9]{0,40}(\\[\\d{1,2}])?){0,6}");

    private final UnitSystem units;
    private final Map<String, String> values = new LinkedHashMap<>();
    private final Map<String, FieldProblem> problems = new LinkedHashMap<>();
    private final Set<String> wanted = new HashSet<>();

    public Form(UnitSystem units) {
        this.units = units;
    }

    /** Takes over posted parameters; those whose names are no field paths are left out. */
    public static Form posted(Map<String, String[]> parameters) {
        Form form = new Form(UnitSystem.of(
                Optional.ofNullable(parameters.get(UNITS)).map(v -> v[0]).orElse(null)));
        parameters.entrySet().stream()
                .filter(e -> PATH.matcher(e.getKey()).matches() && e.getValue().length > 0)
                .limit(MAX_FIELDS)
                .forEach(e -> form.values.put(e.getKey(), e.getValue()[0]));
        form.values.remove(UNITS);
        SharedLists.apply(form, form.value("action"));
        return form;
    }

    /** The same text without a word about problems, to be read for another purpose. */
    public Form unchecked() {
        Form form = new Form(units);
        form.values.putAll(values);
        return form;
    }

    public UnitSystem units() {
        return units;
    }

    /** Every field as typed, in the order of the page. */
    public Map<String, String> values() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** As typed; empty when the field was left out. */
    public String value(String path) {
        return values.getOrDefault(path, "");
    }

    public boolean is(String path, String value) {
        return value.equals(values.get(path));
    }

    public Form put(String path, @Nullable Object value) {
        values.put(path, value == null ? "" : value.toString());
        return this;
    }

    public Form put(String path, @Nullable Double number) {
        return put(path, (Object) (number == null ? null : Numbers.plain(number)));
    }

    public Form put(String path, Quantity quantity, @Nullable Double base) {
        return put(path, (Object) (base == null ? null : quantity.typed(base, units)));
    }

    /** Puts what stands for a field that was left empty. */
    public Form ifEmpty(String path, double number) {
        return ifEmpty(path, Numbers.plain(number));
    }

    /** Puts what stands for a field that was left empty. */
    public Form ifEmpty(String path, String value) {
        return text(path) == null ? put(path, (Object) value) : this;
    }

    /** Puts a choice by its name in capitals, since addresses write it small, or what stands for one left empty. */
    public Form choiceOr(String path, Enum<?> otherwise) {
        String typed = text(path);
        return put(path, (Object) (typed == null ? otherwise.name() : typed.toUpperCase(Locale.ROOT)));
    }

    /** Text without surrounding blanks; null when there is none. */
    public @Nullable String text(String path) {
        String typed = value(path).strip();
        return typed.isEmpty() ? null : typed;
    }

    public boolean checked(String path) {
        return !value(path).isEmpty() && !is(path, "false");
    }

    /** One of the constants; null, with a problem noted for anything but a blank, otherwise. */
    public <E extends Enum<E>> @Nullable E choice(String path, Class<E> type) {
        String typed = text(path);
        if (typed == null) {
            return null;
        }
        Optional<E> found = Arrays.stream(type.getEnumConstants())
                .filter(c -> c.name().equals(typed))
                .findFirst();
        if (found.isEmpty()) {
            refuse(new FieldProblem(path, abbreviated(typed), "one of the choices"));
        }
        return found.orElse(null);
    }

    /** A number in the unit the field states. */
    public @Nullable Double number(String path) {
        return read(path, Function.identity());
    }

    /** A whole number. */
    public @Nullable Integer integer(String path) {
        Double number = number(path);
        if (number != null && number != Math.rint(number)) {
            refuse(new FieldProblem(path, value(path), "a whole number"));
            return null;
        }
        return number == null || Math.abs(number) > Integer.MAX_VALUE ? null : (Integer) number.intValue();
    }

    /** A measure in the form's units, returned in the quantity's base unit. */
    public @Nullable Double number(String path, Quantity quantity) {
        return read(path, n -> quantity.stored(n, units));
    }

    private @Nullable Double read(String path, Function<Double, Double> toBase) {
        String typed = text(path);
        if (typed == null) {
            return null;
        }
        Optional<Double> number = Numbers.parse(typed).map(toBase);
        if (number.isEmpty()) {
            refuse(new FieldProblem(path, abbreviated(typed), "a number such as 12.5"));
        }
        return number.orElse(null);
    }

    /** How many entries a list has: one more than the highest index typed. */
    public int size(String listPath) {
        return FieldLists.size(values, listPath);
    }

    /** Leaves out what lies beyond the most entries a list may have, and says so; longer lists come from no page. */
    public Form limit(String listPath, int most) {
        int size = size(listPath);
        if (size > most) {
            values.keySet().removeIf(path -> FieldLists.index(path, listPath) >= most);
            refuse(new FieldProblem(listPath, String.valueOf(size), "at most " + most + " entries"));
        }
        return this;
    }

    /** Takes an entry out of a list; those behind it move up, and fields that name one of them follow. */
    public Form remove(String listPath, int index) {
        FieldLists.remove(values, listPath, index);
        return this;
    }

    /** Copies every field under one path to the same place under another. */
    public Form copy(String fromPath, String toPath) {
        FieldLists.copy(values, fromPath, toPath);
        return this;
    }

    /** Notes a problem; the first one of a field stands. */
    public Form refuse(FieldProblem problem) {
        if (problems.keySet().stream().anyMatch(known -> known.startsWith(problem.field() + "."))) {
            return this; // a part of it says more exactly what is wrong
        }
        problems.putIfAbsent(
                problem.field(),
                new FieldProblem(problem.field(), problem.value(), UnitText.in(units, problem.allowed())));
        return this;
    }

    public Form refuse(List<FieldProblem> found) {
        found.forEach(this::refuse);
        return this;
    }

    /** Notes what is missing or wrong before it can be submitted, which is no reason not to save it. */
    public Form want(List<FieldProblem> found) {
        for (FieldProblem problem : found) {
            int before = problems.size();
            refuse(problem);
            if (problems.size() > before) {
                wanted.add(problem.field());
            }
        }
        return this;
    }

    /** What cannot be read. */
    public List<FieldProblem> refused() {
        return problems.values().stream()
                .filter(p -> !wanted.contains(p.field()))
                .toList();
    }

    /** What stands in the way of submitting. */
    public List<FieldProblem> wanted() {
        return problems.values().stream()
                .filter(p -> wanted.contains(p.field()))
                .toList();
    }

    /** Whether anything was noted, wanted or refused. */
    public boolean hasProblems() {
        return !problems.isEmpty();
    }

    /** Whether something cannot be read, so that it cannot be saved either. */
    public boolean isRefused() {
        return problems.size() > wanted.size();
    }

    /** How a field with a problem is marked: {@code refused} or {@code wanted}; null where it is fine. */
    public @Nullable String mark(String path) {
        return !problems.containsKey(path) ? null : wanted.contains(path) ? "wanted" : "refused";
    }

    public List<FieldProblem> problems() {
        return List.copyOf(problems.values());
    }

    /** What is wrong with a refused field, as a sentence; null where it is fine. */
    public @Nullable String error(String path) {
        FieldProblem problem = problems.get(path);
        return problem == null ? null : sentence(problem);
    }

    /** A problem as a sentence; one in a text of many lines starts with its place and shows what stands there. */
    public String sentence(FieldProblem problem) {
        return PLACE.matcher(problem.allowed()).lookingAt()
                ? Character.toUpperCase(problem.allowed().charAt(0))
                        + problem.allowed().substring(1) + ". It reads “" + problem.value() + "”."
                : "Must be " + problem.allowed() + ".";
    }

    /** The choices, and what the field holds where it is none of them, so that showing the form changes nothing. */
    public List<Option> withChosen(String path, List<Option> options) {
        String chosen = value(path);
        if (chosen.isEmpty() || options.stream().anyMatch(o -> o.value().equals(chosen))) {
            return options;
        }
        return Stream.concat(options.stream(), Stream.of(new Option(chosen, words(chosen))))
                .toList();
    }

    /** Whether such a field was on the page. */
    public boolean has(String path) {
        return values.containsKey(path);
    }

    /** HTML id of a field. */
    public String id(String path) {
        return path.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("-$", "");
    }

    /** A path in words: {@code surfaces[0].innerChordMm} is "Surface 1, inner chord". */
    public String words(String path) {
        return FieldLists.words(path);
    }

    /** Symbol of a quantity's unit in this form. */
    public String symbol(Quantity quantity) {
        return quantity.symbol(units);
    }

    private static String abbreviated(String text) {
        return text.length() <= 80 ? text : String.format(Locale.ROOT, "%.77s…", text);
    }
}
