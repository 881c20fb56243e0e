package org.vanewright.installation;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class InstallationNews extends RecordNews {
    InstallationNews(InstallationService installations) {
        super("Installation", "installations", installations);
    }
}
