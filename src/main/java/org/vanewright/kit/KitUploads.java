package org.vanewright.kit;

import org.springframework.stereotype.Component;
import org.vanewright.platform.LargeUploads;

/** Where kits are sent to. */
@Component
class KitUploads implements LargeUploads {
    @Override
    public boolean accepts(String method, String path) {
        return method.equals("POST") && (path.equals("/kits/import") || path.equals("/api/v1/kits/imports"));
    }
}
