package org.vanewright.campaign.web;

import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import org.vanewright.platform.LargeUploads;

/** Where still frames are sent to. */
@Component
class FrameUploads implements LargeUploads {
    private static final Pattern PATH =
            Pattern.compile("/campaigns/drafts/[0-9a-f-]{36}/tufts/[A-Za-z0-9-]{1,40}/frames");

    @Override
    public boolean accepts(String method, String path) {
        return method.equals("POST") && PATH.matcher(path).matches();
    }
}
