# Builds the jar in one stage and runs it in another, as a user without rights.
FROM maven:3.9-eclipse-temurin-17 AS build
WORKDIR /src
COPY pom.xml .
COPY src src
COPY api api
RUN mvn -B -q -Dmaven.test.skip=true package && cp target/lodeswing-*.jar /lodeswing.jar

FROM eclipse-temurin:17-jre
RUN useradd --system --uid 10001 --create-home lodeswing && mkdir /data && chown lodeswing /data
USER lodeswing
WORKDIR /home/lodeswing
COPY --from=build /lodeswing.jar lodeswing.jar
# The vector module cannot be named in a jar's manifest.
ENV JAVA_TOOL_OPTIONS="--add-modules jdk.incubator.vector -Djava.awt.headless=true" \
    LODESWING_DATA_FOLDER=/data
VOLUME /data
EXPOSE 8080
ENTRYPOINT ["java", "-jar", "lodeswing.jar"]
