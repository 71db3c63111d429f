package io.loopstate.deployment;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import io.fabric8.kubernetes.api.model.Container;
import io.fabric8.kubernetes.api.model.HasMetadata;
import io.fabric8.kubernetes.api.model.PodSpec;
import io.fabric8.kubernetes.api.model.Secret;
import io.fabric8.kubernetes.api.model.SecretKeySelector;
import io.fabric8.kubernetes.api.model.SecretVolumeSource;
import io.fabric8.kubernetes.api.model.apps.Deployment;
import io.fabric8.kubernetes.client.utils.KubernetesSerialization;
import io.loopstate.testing.Programs;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The manifests under {@code k8s} have no member that their types do not know, and no value of another type. */
class ManifestsTest {
    private static final Path ROOT = Path.of("k8s");
    private static final Path TEMPLATES = ROOT.resolve("templates");
    private static final KubernetesSerialization SERIALIZATION = new KubernetesSerialization();

    static Stream<Path> manifests() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT)) {
            return files
                    .filter(file -> file.toString().endsWith(".yaml") && !file.endsWith("kustomization.yaml"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("manifests")
    void everyMemberIsKnown(Path file) throws IOException {
        HasMetadata resource = SERIALIZATION.unmarshal(Files.readString(file));
        assertThat(resource.getClass().getSimpleName())
                .as("a typed resource, not a generic one")
                .isEqualTo(resource.getKind());
        assertThat(unknown(resource, resource.getKind())).isEmpty();
    }

    /** The check itself finds what it is for. */
    @Test
    void misspelledMemberIsFound() throws IOException {
        String text =
                Files.readString(ROOT.resolve("base/deployment.yaml")).replace("periodSeconds: 5", "periodSecond: 5");
        assertThat(unknown(SERIALIZATION.unmarshal(text), "Deployment"))
                .containsExactly(
                        "Deployment.getSpec.getTemplate.getSpec.getContainers.getReadinessProbe: periodSecond");
    }

    @Test
    void everyFileBelongsToAKustomization() throws IOException {
        for (Path file : manifests().filter(file -> !file.startsWith(TEMPLATES)).toList()) {
            assertThat(Files.readString(file.resolveSibling("kustomization.yaml")))
                    .contains("  - " + file.getFileName() + "\n");
        }
    }

    /** What holds of an overlay without the tool that builds it: its files exist, and what it changes does. */
    @ParameterizedTest
    @ValueSource(strings = {"base", "overlays/dev", "overlays/production"})
    void kustomizationNamesWhatExists(String folder) throws IOException {
        JsonNode kustomization = new ObjectMapper(new YAMLFactory())
                .readTree(ROOT.resolve(folder).resolve("kustomization.yaml").toFile());
        assertThat(kustomization.fieldNames())
                .toIterable()
                .isSubsetOf("apiVersion", "kind", "namespace", "labels", "resources", "replicas", "images");
        kustomization
                .get("resources")
                .forEach(resource -> assertThat(ROOT.resolve(folder).resolve(resource.textValue()))
                        .exists());
        Deployment deployment = (Deployment)
                SERIALIZATION.<HasMetadata>unmarshal(Files.readString(ROOT.resolve("base/deployment.yaml")));
        kustomization
                .path("replicas")
                .forEach(replicas -> assertThat(replicas.get("name").textValue())
                        .isEqualTo(deployment.getMetadata().getName()));
        String image = deployment
                .getSpec()
                .getTemplate()
                .getSpec()
                .getContainers()
                .get(0)
                .getImage();
        kustomization
                .path("images")
                .forEach(change -> assertThat(image.split(":")[0])
                        .isEqualTo(change.get("name").textValue()));
    }

    @Test
    void podsAreConfined() throws IOException {
        Deployment deployment = (Deployment)
                SERIALIZATION.<HasMetadata>unmarshal(Files.readString(ROOT.resolve("base/deployment.yaml")));
        PodSpec pod = deployment.getSpec().getTemplate().getSpec();
        assertThat(pod.getSecurityContext().getRunAsNonRoot()).isTrue();
        assertThat(pod.getSecurityContext().getSeccompProfile().getType()).isEqualTo("RuntimeDefault");
        assertThat(pod.getAutomountServiceAccountToken()).isFalse();
        Container container = pod.getContainers().get(0);
        assertThat(container.getSecurityContext().getReadOnlyRootFilesystem()).isTrue();
        assertThat(container.getSecurityContext().getAllowPrivilegeEscalation()).isFalse();
        assertThat(container.getSecurityContext().getCapabilities().getDrop()).containsExactly("ALL");
        assertThat(container.getResources().getLimits()).containsKey("memory");
    }

    /** The deployment finds in the secret what it looks for, and does without it where there is none. */
    @Test
    void deploymentReadsTheSecretWhereThereIsOne() throws IOException {
        Secret secret =
                (Secret) SERIALIZATION.<HasMetadata>unmarshal(Files.readString(TEMPLATES.resolve("secret.yaml")));
        Deployment deployment = (Deployment)
                SERIALIZATION.<HasMetadata>unmarshal(Files.readString(ROOT.resolve("base/deployment.yaml")));
        PodSpec pod = deployment.getSpec().getTemplate().getSpec();
        SecretKeySelector variable =
                pod.getContainers().get(0).getEnv().get(0).getValueFrom().getSecretKeyRef();
        SecretVolumeSource volume = pod.getVolumes().stream()
                .filter(candidate -> candidate.getName().equals("keys"))
                .findFirst()
                .orElseThrow()
                .getSecret();
        assertThat(variable.getName()).isEqualTo(secret.getMetadata().getName());
        assertThat(volume.getSecretName()).isEqualTo(secret.getMetadata().getName());
        assertThat(variable.getOptional()).isTrue();
        assertThat(volume.getOptional()).isTrue();
        String place = pod.getContainers().get(0).getVolumeMounts().stream()
                .filter(mount -> mount.getName().equals("keys"))
                .findFirst()
                .orElseThrow()
                .getMountPath();
        assertThat(secret.getStringData().get(variable.getKey()))
                .isEqualTo(place + '/' + volume.getItems().get(0).getPath());
        assertThat(secret.getStringData().get(volume.getItems().get(0).getKey()))
                .matches("[a-z]+ [0-9a-f]{64} [0-9]+\n");
    }

    /** With the tool itself, where it is installed; without it {@link #kustomizationNamesWhatExists} has to do. */
    @ParameterizedTest
    @ValueSource(strings = {"dev", "production"})
    void overlayIsBuilt(String overlay) throws IOException, InterruptedException {
        Programs.require("kubectl");
        Process process = new ProcessBuilder("kubectl", "kustomize", "k8s/overlays/" + overlay)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        for (String document : text.split("(?m)^---$")) {
            HasMetadata resource = SERIALIZATION.unmarshal(document);
            assertThat(unknown(resource, resource.getKind())).isEmpty();
        }
    }

    /** Members of a resource, at any depth, that its type has no place for. */
    private static List<String> unknown(Object value, String path) {
        List<String> result = new ArrayList<>();
        if (value instanceof Collection<?> items) {
            items.forEach(item -> result.addAll(unknown(item, path)));
        } else if (value instanceof Map<?, ?> map) {
            map.values().forEach(item -> result.addAll(unknown(item, path)));
        } else if (value != null && value.getClass().getName().startsWith("io.fabric8.")) {
            for (Method getter : value.getClass().getMethods()) {
                result.addAll(unknownBehind(value, getter, path));
            }
        }
        return result;
    }

    private static List<String> unknownBehind(Object value, Method getter, String path) {
        boolean own = getter.getDeclaringClass().getName().startsWith("io.fabric8.")
                && getter.getParameterCount() == 0
                && getter.getName().startsWith("get")
                && !value.getClass().isEnum();
        if (!own) {
            return List.of();
        }
        try {
            Object member = getter.invoke(value);
            if (getter.isAnnotationPresent(JsonAnyGetter.class)) {
                return ((Map<?, ?>) member)
                        .keySet().stream().map(name -> path + ": " + name).toList();
            }
            return unknown(member, path + '.' + getter.getName());
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(path + Arrays.toString(e.getStackTrace()), e);
        }
    }
}
