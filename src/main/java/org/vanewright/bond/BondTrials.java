package org.vanewright.bond;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.adhesive.AdhesiveTrials;
import org.vanewright.layout.LayoutService;

/** The layouts that an adhesive's page offers to try it on. */
@Component
class BondTrials implements AdhesiveTrials {
    private static final int MOST = 12;

    private final LayoutService layouts;

    BondTrials(LayoutService layouts) {
        this.layouts = layouts;
    }

    @Override
    public List<Trial> of(String adhesiveSlug) {
        return layouts.list(null, MOST).items().stream()
                .map(r -> new Trial(
                        r.content().name(),
                        "/layouts/" + r.slug() + "/bond?adhesive=" + adhesiveSlug,
                        r.content().invented()))
                .toList();
    }
}
