package lodeswing.config;

import java.util.List;
import lodeswing.job.Computations;
import lodeswing.store.CountedComputations;
import lodeswing.web.access.ConfidentialAnswers;
import lodeswing.web.access.ForeignRealms;
import lodeswing.web.correlation.TraceContextFilter;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.EchoRefusal;
import lodeswing.web.problem.ProblemReportValve;
import lodeswing.web.problem.ProblemWriter;
import lodeswing.web.representation.KeptReplies;
import lodeswing.web.representation.TimedComputations;
import org.apache.catalina.core.StandardHost;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.core.Ordered;
import org.springframework.web.filter.CorsFilter;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** What every request meets first. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(Limits.class)
class WebWiring {

  @Bean
  FilterRegistrationBean<TraceContextFilter> traceContext() {
    var registration = new FilterRegistrationBean<>(new TraceContextFilter());
    registration.setOrder(Ordered.HIGHEST_PRECEDENCE);
    return registration;
  }

  @Bean
  FilterRegistrationBean<CorsFilter> crossOrigin(
      @Value("${lodeswing.cors.allowed-origins}") List<String> origins, ProblemWriter writer) {
    var filter = new CorsFilter(CrossOriginRules.source(origins));
    filter.setCorsProcessor(new ProblemCorsProcessor(writer));
    var registration = new FilterRegistrationBean<>(filter);
    registration.setOrder(Ordered.HIGHEST_PRECEDENCE + 10);
    return registration;
  }

  @Bean
  FilterRegistrationBean<TimingFilter> timing(
      @Value("${lodeswing.cors.allowed-origins}") List<String> origins) {
    var registration = new FilterRegistrationBean<>(new TimingFilter(origins));
    registration.setOrder(Ordered.HIGHEST_PRECEDENCE);
    return registration;
  }

  @Bean
  FilterRegistrationBean<ConfidentialAnswers> confidentialAnswers() {
    var registration = new FilterRegistrationBean<>(new ConfidentialAnswers());
    registration.setOrder(Ordered.HIGHEST_PRECEDENCE + 15);
    return registration;
  }

  @Bean
  WebMvcConfigurer foreignRealms() {
    return new WebMvcConfigurer() {
      @Override
      public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(new ForeignRealms());
      }
    };
  }

  /** What all others get where they ask for computations. */
  @Bean
  @Primary
  Computations timedComputations(CountedComputations computations) {
    return new TimedComputations(computations);
  }

  @Bean
  KeptReplies keptReplies(Computations computations, Limits limits) {
    return new KeptReplies(computations, limits.replyBytes());
  }

  @Bean
  WebServerFactoryCustomizer<TomcatServletWebServerFactory> serverProblems() {
    return factory -> {
      factory.addContextCustomizers(
          context -> {
            if (context.getParent() instanceof StandardHost host) {
              host.setErrorReportValveClass(ProblemReportValve.class.getName());
            }
          });
      // The server would refuse it itself, with methods that nothing has.
      factory.addConnectorCustomizers(connector -> connector.setAllowTrace(true));
      factory.addEngineValves(new EchoRefusal());
    };
  }
}
