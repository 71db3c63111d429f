package io.loopstate.web.dto;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The member of a reply whose elements are its rows where the reply is written as a table. */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Rows {
    /** A member of each element whose own elements are the rows, beside what the element holds else; empty where there is none. */
    String each() default "";
}
