package org.vanewright.sharing.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.util.UrlPathHelper;
import org.vanewright.record.Revision;
import org.vanewright.sharing.RecordMetadata;

/** Gives the page of each public record {@code shared}, what machines read of it; pages of anything else have none. */
@Component
class MetadataOfPages implements HandlerInterceptor, WebMvcConfigurer {
    private static final Pattern RECORD = Pattern.compile("/([a-z-]{1,40})/[a-z0-9-]{1,80}(/revisions/[0-9]{1,6})?");

    private final RecordMetadata metadata;

    MetadataOfPages(RecordMetadata metadata) {
        this.metadata = metadata;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).excludePathPatterns("/api/**");
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page == null
                || !(page.getModel().get("revision") instanceof Revision<?> revision)
                || !revision.isPublic()) {
            return;
        }
        Matcher path = RECORD.matcher(UrlPathHelper.defaultInstance.getPathWithinApplication(request));
        if (path.matches()) {
            metadata.of(path.group(1), revision).ifPresent(shared -> request.setAttribute("shared", shared));
        }
    }
}
