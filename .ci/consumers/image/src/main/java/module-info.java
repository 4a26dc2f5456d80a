/* SPDX-License-Identifier: Apache-2.0 */
/** An application that asks what water weighs. */
module consumer.image {
    requires org.beveragethermal.materials;
}
