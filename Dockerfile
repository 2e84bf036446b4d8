# Any builder of OCI images can read this file: buildah, podman, docker.
FROM docker.io/library/golang:1.26-bookworm AS build
WORKDIR /src
COPY go.mod go.sum ./
RUN go mod download
COPY . .
RUN CGO_ENABLED=0 go build -trimpath -buildvcs=false -ldflags "-s -w" -o /out/benchproof ./cmd/benchproof \
 && mkdir -p /out/data /out/tmp && chmod 1777 /out/tmp

# Nothing but the program: no shell, no libraries, no other user.
FROM scratch
COPY --from=build /out/benchproof /benchproof
COPY --from=build --chown=65532:65532 /out/data /data
COPY --from=build --chown=65532:65532 /out/tmp /tmp
USER 65532:65532
VOLUME /data
EXPOSE 8080
ENTRYPOINT ["/benchproof"]
CMD ["serve", "--data", "/data", "--addr", "0.0.0.0:8080"]
