package planted.string.web;

import planted.kite.web.KiteController;

/** Wrongly uses what is inside another feature. */
public class Guest {
    public int count(KiteController controller) {
        return controller.count();
    }
}
