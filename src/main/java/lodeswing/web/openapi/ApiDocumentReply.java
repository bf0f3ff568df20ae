package lodeswing.web.openapi;

import jakarta.servlet.http.HttpServletRequest;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.jspecify.annotations.Nullable;
import org.springdoc.webmvc.api.OpenApiWebMvcResource;
import org.springframework.core.MethodParameter;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.http.server.ServletServerHttpRequest;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/**
 * Sends the document that springdoc writes as every other body is sent: with a tag, conditions,
 * ranges and codings.
 */
@RestControllerAdvice(assignableTypes = OpenApiWebMvcResource.class)
final class ApiDocumentReply implements ResponseBodyAdvice<byte[]> {

  @Override
  public boolean supports(
      MethodParameter returnType, Class<? extends HttpMessageConverter<?>> converterType) {
    return returnType.getParameterType() == byte[].class;
  }

  @Override
  public byte @Nullable [] beforeBodyWrite(
      byte @Nullable [] body,
      MethodParameter returnType,
      MediaType type,
      Class<? extends HttpMessageConverter<?>> converterType,
      ServerHttpRequest request,
      ServerHttpResponse response) {
    if (body == null || !(request instanceof ServletServerHttpRequest asked)) {
      return body;
    }
    HttpServletRequest read = asked.getServletRequest();
    Representation form =
        read.getRequestURI().endsWith(".yaml") ? Representation.YAML : Representation.JSON;
    ResponseEntity<byte[]> reply =
        Reply.of(form, body).cache(CachePolicy.REVALIDATE).to(read, Subject.NONE);
    response.setStatusCode(reply.getStatusCode());
    response.getHeaders().putAll(reply.getHeaders());
    return reply.getBody();
  }
}
