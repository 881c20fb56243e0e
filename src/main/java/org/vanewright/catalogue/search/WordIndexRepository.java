package org.vanewright.catalogue.search;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The words of the entries, in the index that the database has for them. Each database has its own. */
interface WordIndexRepository {
    /**
     * A term whose entries are wanted.
     *
     * @param after change whose entries are known already; null where none are
     */
    record Wanted(Term term, @Nullable Long after) {}

    /**
     * Entries of a term, by their ids.
     *
     * @param looked those that were looked at: all that changed since, or else the same as {@code fits}
     * @param fits those of them in which the term is
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared; there are a hundred thousand
    record Fitting(long[] looked, long[] fits) {
        /** From columns of those names. */
        static Fitting of(ResultSet row) throws SQLException {
            return new Fitting(ids(row.getArray("looked")), ids(row.getArray("fits")));
        }

        private static long[] ids(@Nullable Array array) throws SQLException {
            return array == null
                    ? new long[0]
                    : Arrays.stream((Object[]) array.getArray())
                            .mapToLong(id -> ((Number) id).longValue())
                            .toArray();
        }
    }

    /**
     * A statement that gives {@code id}, {@code published_at}, {@code prominence} and {@code weight} of those entries in its
     * parameter {@code ids}, an array, in which any of the words is; the weight is a whole number that is the larger the
     * better they fit.
     */
    record Weights(String sql, Map<String, Object> parameters) {}

    /** A word of the index near one that was typed. */
    record Near(String typed, String word) {}

    /** The entries of each of those terms, in their order, by one statement. */
    List<Fitting> fitting(List<Wanted> wanted);

    /** How well entries fit the terms, of which there is one at least. */
    Weights weights(List<Term> terms);

    /**
     * Words with the most groups of three letters in common with each that was typed, the nearest first; none with a figure
     * in it.
     */
    List<Near> near(List<String> typed, int most);

    /** Keeps the words of an entry in the place of those it had. */
    void put(long entry, WordBag words);

    /** Forgets words that no entry has. */
    void prune();

    /** Above whatever begins with that word and below whatever comes behind. */
    static String beyond(String beginning) {
        return beginning + '\uffff';
    }
}
