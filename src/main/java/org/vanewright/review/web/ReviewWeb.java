package org.vanewright.review.web;

import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.vanewright.review.Remarks;

@Configuration(proxyBeanMethods = false)
class ReviewWeb implements WebMvcConfigurer {
    private final Remarks remarks;

    ReviewWeb(Remarks remarks) {
        this.remarks = remarks;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new DraftRemarks(remarks)).addPathPatterns("/*/drafts/{id}", "/*/drafts/{id}/**");
    }
}
