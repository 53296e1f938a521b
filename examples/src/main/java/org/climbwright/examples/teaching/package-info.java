/**
 * Twelve questions of a course on the climb, each a program that prints a short answer and then its
 * working, line by line. To be copied: each file stands alone. Aeroplanes, climbs and clouds are
 * invented; the sounding of question 5 was observed.
 *
 * <ol>
 *   <li>{@link org.climbwright.examples.teaching.Question01CasToMachAndTas}
 *   <li>{@link org.climbwright.examples.teaching.Question02ConstantCasThenMach}
 *   <li>{@link org.climbwright.examples.teaching.Question03Crossover}
 *   <li>{@link org.climbwright.examples.teaching.Question04TotalOnStaticOff}
 *   <li>{@link org.climbwright.examples.teaching.Question05ThreeFreezingLevels}
 *   <li>{@link org.climbwright.examples.teaching.Question06PercentFeetAndWind}
 *   <li>{@link org.climbwright.examples.teaching.Question07CanIMakeTheRestriction}
 *   <li>{@link org.climbwright.examples.teaching.Question08LevelOff}
 *   <li>{@link org.climbwright.examples.teaching.Question09CabinFromDifferential}
 *   <li>{@link org.climbwright.examples.teaching.Question10ColdDayFromWhichDatum}
 *   <li>{@link org.climbwright.examples.teaching.Question11IsaPlusTwenty}
 *   <li>{@link org.climbwright.examples.teaching.Question12UpdraftAtTwoSpeeds}
 * </ol>
 *
 * <p>To run one, from the folder that holds all modules: {@code mvn -q compile exec:java
 * -Dexec.mainClass=org.climbwright.examples.teaching.Question01CasToMachAndTas}.
 */
@NullMarked
package org.climbwright.examples.teaching;

import org.jspecify.annotations.NullMarked;
