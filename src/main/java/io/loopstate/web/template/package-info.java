/** Templates of pages and pictures. Uses nothing of this service. */
package io.loopstate.web.template;
