/**
 * What sits on a shaft and what carries its torque and thrust: keys, retaining rings, the clutch, and how the shaft bends.
 * A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.shaft;
