package org.vanewright.campaign.log;

import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import org.vanewright.platform.LargeUploads;

/** Where logs are sent to. */
@Component
class LogUploads implements LargeUploads {
    private static final Pattern PATH = Pattern.compile("(/api/v1)?/campaigns/drafts/[0-9a-f-]{36}/logs");

    @Override
    public boolean accepts(String method, String path) {
        return method.equals("POST") && PATH.matcher(path).matches();
    }
}
