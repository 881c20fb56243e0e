package org.vanewright.catalogue;

import java.util.List;

/** A feature that has news for the home page. */
public interface NewsSource {
    /** Latest published revisions, newest first, at most {@code limit}. */
    List<NewsItem> latest(int limit);
}
