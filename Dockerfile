# Builds the jar, takes it apart into layers, and runs it as a user without rights, on a root that may be read-only:
#   docker build -t lodeswing:0.1.0 .
#   docker run --rm -p 8080:8080 --read-only --tmpfs /tmp -v lodeswing:/data lodeswing:0.1.0
FROM maven:3.9-eclipse-temurin-17 AS build
WORKDIR /src
# The dependencies first: they change less often than the source.
COPY pom.xml .
RUN mvn -B -q dependency:go-offline
COPY src src
COPY api api
RUN mvn -B -q -Dmaven.test.skip=true package \
 && java -Djarmode=tools -jar target/lodeswing-0.1.0.jar extract --layers --destination /layers \
 && mv /layers/application/lodeswing-0.1.0.jar /layers/application/lodeswing.jar

FROM eclipse-temurin:17-jre
RUN useradd --system --uid 10001 --user-group --home-dir /app --no-create-home lodeswing \
 && install -d -o lodeswing -g lodeswing /data
WORKDIR /app
# From what changes least to what changes most, so that a new version shares all but the last with the old one.
COPY --from=build /layers/dependencies/ ./
COPY --from=build /layers/spring-boot-loader/ ./
COPY --from=build /layers/snapshot-dependencies/ ./
COPY --from=build /layers/application/ ./
# The vector module cannot be named in a jar's manifest. The heap is a share of the container's memory.
ENV JAVA_TOOL_OPTIONS="--add-modules=jdk.incubator.vector -Djava.awt.headless=true -XX:MaxRAMPercentage=60 -XX:+ExitOnOutOfMemoryError" \
    LODESWING_DATA_FOLDER=/data
# The class-data archive: one start up to the point where all is wired, on the very files and the Java that will run. A heap
# as small as theirs, since the archive holds for small pointers only.
RUN java -Xmx1g -Xlog:cds=error -XX:ArchiveClassesAtExit=lodeswing.jsa -Dspring.context.exit=onRefresh \
      -jar lodeswing.jar --lodeswing.data-folder=/tmp/training \
 && rm -r /tmp/training
USER 10001:10001
VOLUME /data
EXPOSE 8080
HEALTHCHECK --interval=15s --timeout=10s --start-period=60s --retries=3 \
  CMD ["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx32m", "-cp", "lodeswing.jar", "lodeswing.HealthProbe", "http://127.0.0.1:8080/actuator/health/readiness"]
# Signals reach the service itself, which then ends what it has begun. Should the archive not fit, Java starts without it.
ENTRYPOINT ["java", "-XX:SharedArchiveFile=lodeswing.jsa", "-jar", "lodeswing.jar"]
