package io.loopstate.wiring.guard;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.ValidatableResponse;
import io.smallrye.jwt.build.Jwt;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.time.Duration;
import java.util.Base64;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bearer tokens, checked with a public key of the test's own. */
@QuarkusTest
@TestProfile(BearerTest.Tokens.class)
class BearerTest {
    private static final String CALCULATION = "/v1/properties/saturation?temperature=280+K&refrigerant=R-134a";
    private static final String ISSUER = "https://issuer.example";
    private static final String PUBLIC_KEY = "loopstate.test.public-key";
    private static final String PRIVATE_KEY = "loopstate.test.private-key";
    private static final String KEY = "0123456789abcdef";

    /** A pair of keys; made where the configuration is made, read where the test runs. */
    public static final class Tokens implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            // Asked for more than once, by classes of several loaders.
            if (System.getProperty(PRIVATE_KEY) == null) {
                KeyPair pair = pair();
                System.setProperty(PRIVATE_KEY, text(pair.getPrivate()));
                System.setProperty(PUBLIC_KEY, text(pair.getPublic()));
            }
            return Map.of(
                    "loopstate.access.bearer", "true",
                    "loopstate.access.requests-per-minute", "3",
                    "loopstate.access.keys.one.sha256",
                            "9f9f5111f7b27a781f1f1ddde5ebc2dd2b796bfc7365c9c28b548e564176929f",
                    "quarkus.oidc.public-key", System.getProperty(PUBLIC_KEY),
                    "quarkus.oidc.token.principal-claim", "sub",
                    "quarkus.oidc.token.issuer", ISSUER);
        }
    }

    @Test
    void tokenIsAcceptedWithARateForEachSubject() {
        ValidatableResponse reply = ask(token("ann", ISSUER, 60))
                .statusCode(200)
                .header("RateLimit-Policy", "\"subject\";q=3;w=60")
                .header("RateLimit", startsWith("\"subject\";r=2"))
                .header("Cache-Control", containsString("private"));
        // Three at once; meanwhile some may have come back.
        for (int i = 0; i < 10 && reply.extract().statusCode() == 200; i++) {
            reply = ask(token("ann", ISSUER, 60));
        }
        reply.statusCode(429)
                .header("Retry-After", matchesPattern("1?[0-9]|20"))
                .body("code", equalTo("too-many-requests"))
                .body("errors[0].detail", containsString("subject"));
        ask(token("bob", ISSUER, 60)).statusCode(200);
    }

    @Test
    void withoutAnythingBothWaysAreNamed() {
        given().urlEncodingEnabled(false)
                .get(CALCULATION)
                .then()
                .statusCode(401)
                .contentType("application/problem+json")
                .header("WWW-Authenticate", containsString("Bearer"))
                .body("code", equalTo("unauthorized"))
                .body("errors[0].allowed", containsString("Authorization"));
    }

    @Test
    void tokensOfOthersAndOldOnesAreRefused() {
        refused(token("eve", "https://other.example", 60));
        refused(token("eve", ISSUER, -120));
        refused(Jwt.subject("eve").issuer(ISSUER).sign(pair().getPrivate()));
        String good = token("eve", ISSUER, 60);
        refused(good.substring(0, good.lastIndexOf('.') + 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "a.b.c", "eyJhbGciOiJub25lIn0.eyJzdWIiOiJldmUiLCJpc3MiOiJodHRwczovL2lzc3Vlci5leGFtcGxlIn0."})
    void whatIsNoTokenIsRefused(String text) {
        refused(text);
    }

    @Test
    void keysGoOn() {
        given().urlEncodingEnabled(false)
                .header("X-API-Key", KEY)
                .get(CALCULATION)
                .then()
                .statusCode(200)
                .header("RateLimit-Policy", "\"key\";q=3;w=60");
    }

    @Test
    void probesStayOpen() {
        given().get("/livez").then().statusCode(200);
    }

    private static void refused(String token) {
        ask(token)
                .statusCode(401)
                .contentType("application/problem+json")
                .header("WWW-Authenticate", containsString("Bearer"))
                .body("code", equalTo("unauthorized"))
                .body("requestId", nullValue());
    }

    private static ValidatableResponse ask(String token) {
        return given().urlEncodingEnabled(false)
                .header("Authorization", "Bearer " + token)
                .get(CALCULATION)
                .then();
    }

    private static String token(String subject, String issuer, long seconds) {
        return Jwt.subject(subject)
                .issuer(issuer)
                .expiresIn(Duration.ofSeconds(seconds))
                .sign(privateKey());
    }

    private static PrivateKey privateKey() {
        try {
            byte[] key = Base64.getDecoder().decode(System.getProperty(PRIVATE_KEY));
            return KeyFactory.getInstance("RSA")
                    .generatePrivate(new PKCS8EncodedKeySpec(key));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(Key key) {
        return Base64.getEncoder().encodeToString(key.getEncoded());
    }

    private static KeyPair pair() {
        try {
            return KeyPairGenerator.getInstance("RSA").generateKeyPair();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
