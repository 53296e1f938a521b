/** A program of somebody else. */
module org.example.climb {
    requires org.climbwright.core;
}
