package org.vanewright.account.web;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.vanewright.account.InstanceSettings;
import org.vanewright.platform.Outage;
import org.vanewright.record.Actors;

/**
 * Gives every page, error pages included, {@code me}, who is asking, and {@code instance}, what stewards chose. A page made for somebody is kept by nobody, so that
 * it cannot be gone back to after signing out.
 */
@Component
class PersonOfPages implements HandlerInterceptor, WebMvcConfigurer {
    private static final String ME = "me";

    private final Actors actors;
    private final InstanceSettings instance;

    PersonOfPages(Actors actors, InstanceSettings instance) {
        this.actors = actors;
        this.instance = instance;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).excludePathPatterns("/api/**");
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        boolean away = Outage.of(request.getAttribute(RequestDispatcher.ERROR_EXCEPTION)) == Outage.DATABASE_AWAY;
        if (handler instanceof HandlerMethod && !away) {
            try {
                tell(request);
            } catch (RuntimeException e) {
                boolean page = request.getDispatcherType() == DispatcherType.ERROR && Outage.of(e) != null;
                if (!page) {
                    throw e;
                }
            }
        }
        return true;
    }

    /** An error page is to be shown while the database is away, too: it then knows nobody. */
    private void tell(HttpServletRequest request) {
        request.setAttribute(ME, actors.current());
        if (request.getDispatcherType() == DispatcherType.ERROR) {
            instance.name();
        }
        request.setAttribute("instance", instance);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page != null && request.getAttribute(ME) != null && actors.current().signedIn()) {
            response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        }
    }
}
